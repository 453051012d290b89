package org.misecue.claims;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.WordStream;

/** Written text as a stream, so that it is read by the same grammar as talk; and what a line claims of itself. */
final class OwnClaims {

    private OwnClaims() {}

    static WordStream stream(String source, Duration at, String text) {
        List<Word> words = Arrays.stream(
                        text.replaceAll("[·•|/(),;:#–—]", " $0 ").strip().split("\\s+"))
                .filter(word -> !word.isBlank())
                .map(word -> new Word(word, at))
                .toList();
        Cue cue = new Cue(at, at, Optional.empty(), text, words);
        return WordStream.of(List.of(new Narration(source, List.of(cue), List.of())));
    }

    /** Whether the line's own words deny the same: "vegan butter" denies dairy. */
    static boolean deny(IngredientLine line, Denial denial) {
        return new ClaimGrammar(stream("", Duration.ZERO, line.ingredient()))
                .all().stream()
                        .map(Phrase::denial)
                        .anyMatch(own -> own.equals(denial)
                                || !denial.allergens().isEmpty()
                                        && own.allergens().containsAll(denial.allergens()));
    }
}
