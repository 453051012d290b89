package org.misecue.align;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.Places;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/**
 * Finds the step that is on at each moment: the stream of words is cut into short even blocks, each block speaks for the
 * steps whose words and ingredients it has, and the most likely walk through the steps is taken, mostly forward.
 */
public final class Aligner {

    /** About six seconds of speech: short enough for a step of one sentence. */
    private static final int BLOCK = 12;

    private Aligner() {}

    public static Alignment align(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        WordStream words = WordStream.of(narrations);
        return align(recipe, words, new NameListener(words, recipe, pantry).all());
    }

    /** The same for a stream whose names are already found. */
    public static Alignment align(Recipe recipe, WordStream words, List<NameHit> names) {
        if (recipe.steps().isEmpty() || words.size() == 0) {
            return new Alignment(List.of());
        }
        StepWords steps = new StepWords(recipe);
        Places<NameHit> places = Places.ofNames(names);
        List<double[]> blocks = new ArrayList<>();
        for (int start = 0; start < words.size(); start += BLOCK) {
            blocks.add(steps.support(words, places, start, Math.min(words.size(), start + BLOCK)));
        }
        return spans(words, Walk.best(blocks));
    }

    private static Alignment spans(WordStream words, int[] stepOfBlock) {
        List<StepSpan> spans = new ArrayList<>();
        int from = 0;
        for (int at = 1; at <= words.size(); at++) {
            boolean ends = at == words.size()
                    || stepOfBlock[at / BLOCK] != stepOfBlock[from / BLOCK]
                    || !words.at(at).source().equals(words.at(from).source());
            if (ends) {
                Token first = words.at(from);
                spans.add(new StepSpan(stepOfBlock[from / BLOCK], first.source(), first.at(), end(words, at, first)));
                from = at;
            }
        }
        return new Alignment(List.copyOf(spans));
    }

    private static Duration end(WordStream words, int at, Token first) {
        if (at < words.size() && words.at(at).source().equals(first.source())) {
            return words.at(at).at();
        }
        return words.at(at - 1).at().plusSeconds(1);
    }

    /** The first moment of each step, by step number: what chapters are made of. */
    public static List<StepSpan> firstOfEach(Alignment alignment) {
        return alignment.spans().stream()
                .filter(span -> span.step() > 0)
                .collect(Collectors.toMap(StepSpan::step, Function.identity(), (one, other) -> one))
                .values()
                .stream()
                .sorted((one, other) -> Integer.compare(one.step(), other.step()))
                .toList();
    }
}
