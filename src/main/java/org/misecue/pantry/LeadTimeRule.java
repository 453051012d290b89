package org.misecue.pantry;

import java.io.InputStream;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** One row of {@code lead-times.yaml}. */
record LeadTimeRule(
        String job,
        List<String> ingredients,
        List<List<String>> words,
        List<List<String>> with,
        String what,
        Duration ahead,
        String why,
        String source) {

    private static final List<String> KEYS = List.of("job", "for", "words", "with", "do", "ahead", "why", "source");

    /** @throws org.misecue.notice.BadInput with file and line at the first bad row */
    static List<LeadTimeRule> read(String file, InputStream in) {
        return YamlRows.read(file, in, KEYS).stream()
                .map(row -> new LeadTimeRule(
                        row.text("job"),
                        row.texts("for"),
                        phrases(row, "words"),
                        phrases(row, "with"),
                        row.text("do"),
                        row.duration("ahead"),
                        row.text("why"),
                        row.text("source")))
                .toList();
    }

    /** @param said the comparable words of the ingredient line */
    boolean fits(Optional<Ingredient> ingredient, List<String> said) {
        return isFor(ingredient) && hasOneOf(words, said) && (with.isEmpty() || hasOneOf(with, said));
    }

    private static boolean hasOneOf(List<List<String>> phrases, List<String> said) {
        return phrases.stream().anyMatch(phrase -> Collections.indexOfSubList(said, phrase) >= 0);
    }

    private static List<List<String>> phrases(YamlRow row, String key) {
        return row.texts(key).stream().map(Names::words).toList();
    }

    private boolean isFor(Optional<Ingredient> ingredient) {
        return ingredients.contains("any")
                || ingredient
                        .filter(one -> ingredients.contains(one.name())
                                || one.names().stream().anyMatch(ingredients::contains)
                                || (one.chilled() && ingredients.contains("chilled")))
                        .isPresent();
    }

    LeadTime leadTime(String name) {
        return new LeadTime(job, what.replace("{it}", name), ahead, why, source);
    }
}
