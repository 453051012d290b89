package org.misecue.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeJson;
import org.misecue.recipe.RecipeReader;
import org.misecue.recipe.RecipeText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows how a recipe was understood. */
@Command(name = "read", description = "Show how a recipe was understood, line by line.")
final class ReadCommand extends MisecueCommand {

    @Parameters(
            arity = "0..1",
            paramLabel = "RECIPE",
            defaultValue = ".",
            description = "A recipe file, or an episode's folder; this folder where none is named.")
    private Path named = Path.of(".");

    @Mixin
    private final ResultOptions to = new ResultOptions();

    ReadCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Recipe recipe = recipe();
        hand(to.json ? RecipeJson.of(recipe) : RecipeText.of(recipe), to);
        return ExitCode.OK;
    }

    private Recipe recipe() {
        Path path = stage.resolve(named);
        if (Files.isDirectory(path)) {
            Worktop worktop = open(named);
            worktop.pantry();
            return worktop.recipe();
        }
        if (!Files.exists(path)) {
            throw new BadInput(
                    Place.of(named.toString()), "there is no such file or folder; check the name of the recipe.");
        }
        read(own(path.toAbsolutePath().resolveSibling("")));
        return RecipeReader.read(path, named.toString());
    }
}
