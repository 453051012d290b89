package org.misecue.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.misecue.episode.NewEpisode;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes an episode around a recipe. */
@Command(
        name = "new",
        description = "Make an episode's folder from a recipe file. Nothing that exists is written over.")
final class NewCommand extends MisecueCommand {

    @Parameters(index = "0", paramLabel = "RECIPE", description = "The recipe file; it is copied.")
    private Path recipeFile = Path.of("");

    @Nullable
    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "EPISODE",
            description = "The folder to make; named after the dish where none is given.")
    private Path folder;

    NewCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Path file = stage.resolve(recipeFile);
        if (!Files.isRegularFile(file)) {
            throw new BadInput(Place.of(recipeFile.toString()), "there is no such recipe file; check the name.");
        }
        Recipe recipe = RecipeReader.read(
                file, recipeFile.toString(), read(own(file.toAbsolutePath().resolveSibling(""))));
        Path target = folder == null ? Path.of(NewEpisode.folderName(recipe.title())) : folder;
        NewEpisode.make(file, recipe.title(), stage.resolve(target), target.toString());
        tell(recipe.notes());
        if (!common.quiet) {
            stage.out().println("Made " + target + ". Put narrations into narration/ and films into footage/, then:");
            stage.out().println("  misecue make " + target);
        }
        return ExitCode.OK;
    }
}
