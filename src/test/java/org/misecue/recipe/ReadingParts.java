package org.misecue.recipe;

import java.io.ByteArrayInputStream;
import org.apache.tika.metadata.Metadata;
import org.apache.tika.parser.AutoDetectParser;
import org.apache.tika.parser.ParseContext;
import org.apache.tika.sax.ToXMLContentHandler;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.manuscript.Manuscript;
import org.misecue.recipe.manuscript.Opening;

/** The parts of reading one by one, for measuring. */
public final class ReadingParts {

    private static final AutoDetectParser TIKA = new AutoDetectParser();

    private ReadingParts() {}

    public static IngredientLine line(String text) {
        return new IngredientLineParser(Pantry.standard()).parse(Opening.item(text));
    }

    public static Recipe parsed(Manuscript manuscript) {
        return new RecipeParser("recipe", Pantry.standard()).parse(manuscript);
    }

    /** What Tika makes of a document, as XHTML. */
    public static String tika(byte[] document) throws Exception {
        ToXMLContentHandler xhtml = new ToXMLContentHandler();
        TIKA.parse(new ByteArrayInputStream(document), xhtml, new Metadata(), new ParseContext());
        return xhtml.toString();
    }
}
