package org.misecue.recipe;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.tika.metadata.Metadata;
import org.apache.tika.parser.AutoDetectParser;
import org.apache.tika.parser.ParseContext;
import org.apache.tika.sax.ToXMLContentHandler;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.manuscript.Manuscript;
import org.misecue.recipe.manuscript.Opening;

/** The parts of reading one by one, for measuring. */
public final class ReadingParts {

    private ReadingParts() {}

    public static IngredientLine line(String text) {
        return new IngredientLineParser(Pantry.standard()).parse(Opening.item(text));
    }

    public static Recipe parsed(Manuscript manuscript) {
        return new RecipeParser("recipe", Pantry.standard()).parse(manuscript);
    }

    public static String markdown() {
        return TextDocuments.markdown("- ");
    }

    public static String page() {
        return TextDocuments.page();
    }

    /** The oat slice in a kind of document. */
    public static byte[] document(String kind) throws IOException {
        return switch (kind) {
            case "docx" -> WordDocuments.lists();
            case "odt" -> OtherDocuments.odt(false);
            case "pdf" -> OtherDocuments.pdf(false);
            default -> page().getBytes(StandardCharsets.UTF_8);
        };
    }

    /** What Tika makes of a document, as XHTML. */
    public static String tika(byte[] document) throws Exception {
        ToXMLContentHandler xhtml = new ToXMLContentHandler();
        new AutoDetectParser().parse(new ByteArrayInputStream(document), xhtml, new Metadata(), new ParseContext());
        return xhtml.toString();
    }
}
