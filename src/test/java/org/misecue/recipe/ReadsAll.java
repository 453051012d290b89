package org.misecue.recipe;

import java.nio.file.Path;
import org.misecue.notice.BadInput;

/** Reads files one after the other in a program of its own, with as little memory as it is given. */
final class ReadsAll {

    private ReadsAll() {}

    /** For each file a line: how many milliseconds it took and what was said. */
    public static void main(String... files) {
        for (String file : files) {
            long start = System.nanoTime();
            String said;
            try {
                RecipeReader.read(Path.of(file), Path.of(file).getFileName().toString());
                said = "a recipe";
            } catch (BadInput e) {
                said = e.getMessage();
            }
            System.out.println((System.nanoTime() - start) / 1_000_000 + " " + said);
        }
    }
}
