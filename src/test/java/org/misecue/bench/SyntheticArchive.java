package org.misecue.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Writes folders of invented episodes: a recipe and twelve minutes of narration each, always the same for the same seed.
 * The first episodes of a larger archive are those of a smaller one.
 */
public final class SyntheticArchive {

    private SyntheticArchive() {}

    /** Makes so many episode folders in a folder, which is made too where it is missing. */
    public static void write(Path folder, int episodes, long seed) {
        ArchiveWords words = ArchiveWords.read();
        try {
            for (int number = 1; number <= episodes; number++) {
                write(folder, number, new Random(seed * 1_000_003 + number), words);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path folder, int number, Random random, ArchiveWords words) throws IOException {
        SyntheticRecipe recipe = SyntheticRecipe.of(words, random);
        String name = "%05d-%s"
                .formatted(number, recipe.title().toLowerCase(Locale.ROOT).replace(' ', '-'));
        Path narration = Files.createDirectories(folder.resolve(name).resolve("narration"));
        Files.writeString(folder.resolve(name).resolve("recipe.md"), recipe.written());
        Files.writeString(narration.resolve("main.vtt"), SyntheticTalk.over(recipe, words, random));
    }
}
