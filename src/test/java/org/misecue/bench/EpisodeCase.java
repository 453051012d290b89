package org.misecue.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.compare.Comparer;
import org.misecue.compare.Comparison;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Mechanism;

/**
 * A folder with a recipe, a narration and the truth about every written quantity, read as an episode's files are.
 *
 * @param cueStarts where the narration's own cues begin, in seconds, however it may be cut now
 */
record EpisodeCase(Path folder, Recipe recipe, Narration narration, List<Double> cueStarts, Rows truth) {

    private static final String TRUTH = "truth.json";

    /** The cases in and below a folder, by name. */
    static List<EpisodeCase> below(Path parent) {
        try (Stream<Path> files = Files.walk(parent)) {
            return files.filter(file -> file.getFileName().toString().equals(TRUTH))
                    .map(Path::getParent)
                    .sorted()
                    .map(EpisodeCase::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(parent + " cannot be read", e);
        }
    }

    private static EpisodeCase read(Path folder) {
        Path recipe = only(folder, "recipe.*");
        Narration narration = narration(only(folder, "narration.*"));
        List<Double> starts = narration.cues().stream()
                .map(cue -> cue.start().toMillis() / 1000.0)
                .sorted()
                .toList();
        return new EpisodeCase(
                folder, RecipeReader.read(recipe, name(recipe)), narration, starts, Rows.read(folder.resolve(TRUTH)));
    }

    private static Path only(Path folder, String pattern) {
        try (Stream<Path> files = Files.list(folder)) {
            var matcher = folder.getFileSystem().getPathMatcher("glob:" + pattern);
            return files.filter(file -> matcher.matches(file.getFileName()))
                    .min(Path::compareTo)
                    .orElseThrow(() -> new IllegalArgumentException(folder + " has no " + pattern));
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be read", e);
        }
    }

    private static Narration narration(Path file) {
        return NarrationReader.read(file, "narration/main" + name(file).substring("narration".length()));
    }

    static String name(Path file) {
        return file.getFileName().toString();
    }

    String name() {
        return name(folder);
    }

    List<Cue> cues() {
        return narration.cues();
    }

    Comparison compare(Set<Mechanism> mechanisms) {
        return Comparer.compare(recipe, List.of(narration), Pantry.standard(), mechanisms);
    }

    String recipeText() throws IOException {
        return Files.readString(recipeFile());
    }

    private Path recipeFile() {
        return only(folder, "recipe.*");
    }

    EpisodeCase withRecipe(String text) {
        Recipe other = Scratch.read(name(recipeFile()), text, file -> RecipeReader.read(file, name(file)));
        return new EpisodeCase(folder, other, narration, cueStarts, truth);
    }

    EpisodeCase withNarration(String text) {
        Narration other = Scratch.read("narration.txt", text, EpisodeCase::narration);
        return new EpisodeCase(folder, recipe, other, cueStarts, truth);
    }
}
