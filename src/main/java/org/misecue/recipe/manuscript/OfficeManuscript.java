package org.misecue.recipe.manuscript;

/** Documents of word processors: Word, OpenDocument, RTF. */
final class OfficeManuscript implements ManuscriptReader {

    @Override
    public boolean takes(String type) {
        return type.contains("wordprocessingml")
                || type.equals("application/msword")
                || type.contains("opendocument.text")
                || type.endsWith("/rtf")
                || type.equals("application/x-tika-ooxml")
                || type.equals("application/x-tika-ooxml-protected")
                || type.equals("application/x-tika-msoffice");
    }

    @Override
    public Manuscript read(Document document) {
        return WebPageManuscript.shown(Extraction.body(document));
    }
}
