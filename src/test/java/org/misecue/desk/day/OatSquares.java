package org.misecue.desk.day;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small episode whose day is planned in a moment. */
public final class OatSquares {

    static final String NAME = "oats";

    private static final String RECIPE = """
            # Oat squares

            Makes 9 squares

            ## Ingredients

            - 150 g unsalted butter, softened
            - 80 g caster sugar
            - 200 g rolled oats

            ## Method

            1. Heat the oven to 180 °C. Beat the butter with the sugar until pale.
            2. Stir in the oats and press into a 20 cm square tin.
            3. Bake for 25 minutes. Cool in the tin for 30 minutes, then cut.
            """;

    private OatSquares() {}

    /** @param settings what episode.yaml says */
    public static Path in(Path folder, String settings) {
        try {
            Path episode = Files.createDirectories(folder.resolve(NAME));
            Files.writeString(episode.resolve("recipe.md"), RECIPE);
            Files.writeString(episode.resolve("episode.yaml"), settings);
            return episode;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
