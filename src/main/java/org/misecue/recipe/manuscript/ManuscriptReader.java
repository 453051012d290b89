package org.misecue.recipe.manuscript;

/** Turns one kind of document into lines. */
interface ManuscriptReader {

    /** Whether this reader takes the document, by its media type such as {@code text/html}. */
    boolean takes(String type);

    /** @throws org.misecue.notice.BadInput if the document cannot be read, with the remedy */
    Manuscript read(Document document);
}
