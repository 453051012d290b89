package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.narration.Word;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;

/** Where the recogniser cut its cues is an accident: with the same words at the same times every verdict holds. */
class RecutPropertyTest {

    private static final Recipe RECIPE = RecipeReader.read(Path.of("sample-project/recipe.md"), "recipe.md");
    private static final Narration NARRATION =
            NarrationReader.read(Path.of("sample-project/narration/main.vtt"), "narration/main.vtt");
    private static final List<Verdict> UNCUT = verdicts(NARRATION);

    @Property(tries = 15)
    void recutting_changes_no_verdict(@ForAll @IntRange(min = 1, max = 40) int wordsPerCue) {
        List<Word> words =
                NARRATION.cues().stream().flatMap(cue -> cue.words().stream()).toList();
        List<Cue> cues = new ArrayList<>();
        for (int from = 0; from < words.size(); from += wordsPerCue) {
            List<Word> piece = words.subList(from, Math.min(words.size(), from + wordsPerCue));
            Duration end = piece.get(piece.size() - 1).at().plusMillis(200);
            String text = String.join(" ", piece.stream().map(Word::text).toList());
            cues.add(new Cue(piece.get(0).at(), end, Optional.empty(), text, List.copyOf(piece)));
        }
        assertThat(verdicts(new Narration(NARRATION.source(), cues, List.of()))).isEqualTo(UNCUT);
    }

    private static List<Verdict> verdicts(Narration narration) {
        Comparison comparison = Comparer.compare(RECIPE, List.of(narration), Pantry.standard());
        List<Verdict> verdicts = new ArrayList<>();
        comparison.written().forEach(line -> verdicts.add(line.verdict()));
        comparison.settings().forEach(setting -> verdicts.add(setting.verdict()));
        return verdicts;
    }
}
