package org.misecue.recipe;

import java.nio.file.Path;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.manuscript.Manuscripts;

/**
 * Reads a recipe from Markdown, plain text, Word, OpenDocument, RTF, HTML (with or without schema.org data) or PDF.
 * Every original line is kept; what was not understood stands in the recipe's notes.
 */
public final class RecipeReader {

    private RecipeReader() {}

    /**
     * The recipe in a file.
     *
     * @param nameForPeople how the user knows the file; it stands before every complaint
     * @throws org.misecue.notice.BadInput if the file is missing, empty, too large, locked, no document, or holds no
     *     ingredients
     */
    public static Recipe read(Path file, String nameForPeople) {
        return read(file, nameForPeople, Pantry.standard());
    }

    /**
     * The same by a person's own pantry: its names are known on the list and in the method, its weights to the checks.
     *
     * @throws org.misecue.notice.BadInput as above
     */
    public static Recipe read(Path file, String nameForPeople, Pantry pantry) {
        return new RecipeParser(nameForPeople, pantry).parse(Manuscripts.read(file, nameForPeople));
    }
}
