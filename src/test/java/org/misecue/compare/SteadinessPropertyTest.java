package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

/** What must not change a verdict: talk that measures nothing, and the size of the whole bake. */
class SteadinessPropertyTest {

    /** What is said of one line: an amount written, one said (0 for none) and how. */
    private record Said(String name, int written, int said, String sentence) {}

    private static final List<Said> TALK = List.of(
            new Said("plain flour", 300, 300, "so in goes N grams of plain flour and give that a stir"),
            new Said("caster sugar", 120, 120, "then the caster sugar and you want N grams of that"),
            new Said("unsalted butter", 90, 110, "next N grams of butter cut up small"),
            new Said("ground almonds", 60, 60, "the ground almonds are about N grams"),
            new Said("double cream", 200, 0, "pour the cream in slowly and keep stirring"),
            new Said("raisins", 75, 75, "and the raisins last of all there is N grams of those"));

    /** Numbers that measure nothing here. From how people talk; no source. */
    private static final List<String> ASIDES = List.of(
            "it was two pounds fifty at the market this week",
            "i have been doing this for thirty years",
            "my sister puts four of them in",
            "we had forty people here that day",
            "my son is eleven now you know",
            "put the mixer on speed four",
            "we moved here in 1998",
            "there is somebody at the door again hang on no it is only the wind",
            "last week i did ninety and it was far too much",
            "it is only a ten minute job this",
            "that spoon was my grandmother's she had seven of them",
            "and i have washed up three bowls already");

    @Provide
    Arbitrary<String> asides() {
        return Arbitraries.of(ASIDES);
    }

    @Property(tries = 120)
    void an_aside_changes_no_verdict(@ForAll("asides") String aside, @ForAll @IntRange(min = 0, max = 6) int place)
            throws IOException {
        List<String> sentences = new ArrayList<>(sentences(1));
        List<Verdict> without = verdicts(recipe(1), sentences);
        sentences.add(place, aside);
        assertThat(verdicts(recipe(1), sentences)).isEqualTo(without);
    }

    @Property(tries = 40)
    void scaling_recipe_and_speech_together_keeps_every_verdict(@ForAll @IntRange(min = 1, max = 40) int factor)
            throws IOException {
        assertThat(verdicts(recipe(factor), sentences(factor)))
                .containsExactly(
                        Verdict.AGREES,
                        Verdict.AGREES,
                        Verdict.DIFFERS,
                        Verdict.APPROXIMATE,
                        Verdict.UNSPOKEN,
                        Verdict.AGREES);
    }

    private static List<String> sentences(int factor) {
        return TALK.stream()
                .map(one -> one.sentence().replace("N", String.valueOf(one.said() * factor)))
                .toList();
    }

    private static Recipe recipe(int factor) throws IOException {
        String lines = TALK.stream()
                .map(one -> "- " + one.written() * factor + " g " + one.name())
                .collect(Collectors.joining("\n"));
        Path folder = Files.createTempDirectory("steady");
        Path file = folder.resolve("recipe.md");
        try {
            Files.writeString(file, "# Bake\n\n## Ingredients\n\n" + lines + "\n\n## Method\n\n1. Mix everything.\n");
            return RecipeReader.read(file, "recipe.md");
        } finally {
            Files.deleteIfExists(file);
            Files.delete(folder);
        }
    }

    /** Each sentence in a cue of its own. */
    private static List<Verdict> verdicts(Recipe recipe, List<String> sentences) {
        Comparison comparison =
                Comparer.compare(recipe, List.of(Speech.narration(String.join(" | ", sentences))), Pantry.standard());
        return comparison.written().stream().map(LineVerdict::verdict).toList();
    }
}
