package org.misecue.spoken;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.spoken.ReferenceTables.Difference;
import org.misecue.spoken.ReferenceTables.Find;

/**
 * Holds what we hear against a general-purpose recogniser of numbers and units, @microsoft/recognizers-text-suite 1.3.1:
 * same first word, same value, same unit. See {@code src/test/recogniser/README.md}. A row of {@code
 * reference-differences.csv} says where we differ, and why we are right.
 */
class RecogniserReferenceTest {

    private static final Map<String, List<Find>> FINDS = ReferenceTables.finds().stream()
            .collect(groupingBy(Find::sentence, LinkedHashMap::new, Collectors.toList()));
    private static final List<Difference> DIFFERENCES = ReferenceTables.differences();

    static List<String> sentences() {
        return ReferenceTables.sentences();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sentences")
    void hears_what_the_other_recogniser_hears_or_says_why_not(String sentence) {
        List<Difference> reasoned = DIFFERENCES.stream()
                .filter(row -> row.sentence().equals(sentence))
                .map(RecogniserReferenceTest::withoutReason)
                .toList();
        assertThat(differences(sentence)).isEqualTo(reasoned);
    }

    @Test
    void every_sentence_was_shown_to_the_other_recogniser() {
        assertThat(FINDS.keySet()).containsExactlyElementsOf(sentences());
    }

    @Test
    void every_difference_is_of_a_known_sentence_and_has_its_reason() {
        assertThat(DIFFERENCES)
                .allMatch(row -> FINDS.containsKey(row.sentence()))
                .allMatch(row -> row.reason().matches("\\p{Lu}.+\\."));
    }

    private static Difference withoutReason(Difference row) {
        return new Difference(row.sentence(), row.ours(), row.theirs(), "");
    }

    private static List<Difference> differences(String sentence) {
        WordStream words = Speech.stream(sentence);
        List<Stretch> ours = new QuantityListener(words)
                .all().stream().map(heard -> Stretch.of(words, heard)).toList();
        List<Stretch> theirs = FINDS.getOrDefault(sentence, List.of()).stream()
                .map(Stretch::of)
                .flatMap(Optional::stream)
                .toList();
        List<Difference> differences = new ArrayList<>();
        int end = 0;
        for (Stretch first : inOrder(ours, theirs)) {
            if (first.start() < end) {
                continue;
            }
            int start = first.start();
            end = endOfOverlaps(first, inOrder(ours, theirs));
            String our = Stretch.describe(sentence, within(start, end, ours));
            String their = Stretch.describe(sentence, within(start, end, theirs));
            if (!our.equals(their)) {
                differences.add(new Difference(sentence, our, their, ""));
            }
        }
        return differences;
    }

    private static List<Stretch> inOrder(List<Stretch> ours, List<Stretch> theirs) {
        return Stream.concat(ours.stream(), theirs.stream())
                .sorted(Comparator.comparing(Stretch::start))
                .toList();
    }

    /** Whatever shares a word, directly or through another, is about the same. */
    private static int endOfOverlaps(Stretch first, List<Stretch> inOrder) {
        int end = first.end();
        for (Stretch other : inOrder) {
            if (other.start() >= first.start() && other.start() < end) {
                end = Math.max(end, other.end());
            }
        }
        return end;
    }

    private static List<Stretch> within(int start, int end, List<Stretch> stretches) {
        return stretches.stream()
                .filter(one -> one.start() >= start && one.start() < end)
                .toList();
    }
}
