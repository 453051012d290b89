package org.misecue.recipe.manuscript;

/** Turns one kind of document into lines. */
interface ManuscriptReader {

    /** Whether this reader takes the document, by its media type such as {@code text/html}. */
    boolean takes(String type);

    /**
     * The lines of the document.
     *
     * @throws org.misecue.notice.BadInput if it cannot be read, with the remedy
     */
    Manuscript read(Document document);
}
