package org.misecue.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.misecue.episode.EpisodeSettings;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.BrokenAmounts;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeJson;
import org.misecue.recipe.RecipeReader;
import org.misecue.recipe.RecipeText;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.ScaledJson;
import org.misecue.scale.ScaledSheet;
import org.misecue.scale.ScaledText;
import org.misecue.scale.Scaler;
import org.misecue.scale.Spoons;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows how a recipe was understood; amounts that are none are bad input, whatever else could be read. */
@Command(name = "read", description = "Show how a recipe was understood, line by line, or the recipe at another size.")
final class ReadCommand extends MisecueCommand {

    @Parameters(
            arity = "0..1",
            paramLabel = "RECIPE",
            defaultValue = ".",
            description = "A recipe file, or an episode's folder; this folder where none is named.")
    private Path named = Path.of(".");

    /** At most one of them. */
    @Nullable
    @ArgGroup
    private BatchOptions size;

    @Mixin
    private final SheetOptions sheet = new SheetOptions();

    @Mixin
    private final ResultOptions to = new ResultOptions();

    /** A recipe with the kitchen that it is weighed in. */
    private record Kitchen(Recipe recipe, Pantry pantry, ScaleRules rules) {}

    ReadCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Kitchen kitchen = kitchen();
        Optional<ScaledSheet> scaled = batch().map(batch -> {
            ScaleRules rules = sheet.rules(kitchen.rules);
            return sheet.sheet(Scaler.scale(kitchen.recipe, batch, rules, kitchen.pantry), rules, kitchen.pantry);
        });
        hand(to.json ? json(kitchen.recipe, scaled) : text(kitchen.recipe, scaled), to);
        List<Note> broken = BrokenAmounts.in(kitchen.recipe);
        broken.forEach(note -> stage.err().println("misecue: " + note));
        return broken.isEmpty() ? ExitCode.OK : ExitCode.BAD_INPUT;
    }

    private Optional<Batch> batch() {
        return Optional.ofNullable(size)
                .flatMap(BatchOptions::batch)
                .or(() -> sheet.asked() ? Optional.of(Batch.WRITTEN) : Optional.empty());
    }

    private String text(Recipe recipe, Optional<ScaledSheet> scaled) {
        scaled.ifPresent(any -> tell(recipe.notes()));
        return scaled.map(ScaledText::of).orElseGet(() -> RecipeText.of(recipe));
    }

    private static String json(Recipe recipe, Optional<ScaledSheet> scaled) {
        return scaled.map(each -> withScaled(RecipeJson.of(recipe), each)).orElseGet(() -> RecipeJson.of(recipe));
    }

    private static String withScaled(String recipe, ScaledSheet scaled) {
        ObjectMapper mapper = new ObjectMapper();
        try {
            ObjectNode whole = (ObjectNode) mapper.readTree(recipe);
            whole.set("scaled", ScaledJson.of(scaled));
            return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(whole);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("our own JSON cannot be read", e);
        }
    }

    /** The episode's; a recipe by itself is weighed as in an episode without settings. */
    private Kitchen kitchen() {
        Path path = stage.resolve(named);
        if (Files.isDirectory(path)) {
            Worktop worktop = open(named);
            return new Kitchen(worktop.recipe(), worktop.kitchen(), worktop.rules());
        }
        if (!Files.exists(path)) {
            throw new BadInput(
                    Place.of(named.toString()), "there is no such file or folder; check the name of the recipe.");
        }
        Pantry pantry = read(own(path.toAbsolutePath().resolveSibling("")));
        Recipe recipe = RecipeReader.read(path, named.toString(), pantry);
        EpisodeSettings usual = EpisodeSettings.DEFAULT;
        return new Kitchen(
                recipe,
                pantry.speaking(usual.language()),
                ScaleRules.standard().with(Spoons.of(recipe, usual.language())));
    }
}
