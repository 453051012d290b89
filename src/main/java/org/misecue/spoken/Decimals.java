package org.misecue.spoken;

import java.math.BigDecimal;
import java.util.Optional;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.SmallNumbers.Small;

/** What follows a spoken "point". */
final class Decimals {

    private final WordStream words;
    private final SmallNumbers small;

    Decimals(WordStream words, SmallNumbers small) {
        this.words = words;
        this.small = small;
    }

    /** The digits after a spoken "point": "five", "two five", "seventy five", "25". */
    Optional<Cardinals.Read> at(int start) {
        StringBuilder digits = new StringBuilder();
        int at = start;
        while (at < words.size()) {
            String word = words.text(at);
            if (NumberWords.OHS.contains(word)) {
                digits.append('0');
                at++;
            } else if (word.matches("\\d{1,6}")) {
                digits.append(word);
                at++;
            } else {
                Optional<Small> found = small.at(at);
                if (found.isEmpty()) {
                    break;
                }
                digits.append(found.get().value());
                at = found.get().end();
            }
        }
        return digits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Cardinals.Read(Rationals.of(new BigDecimal("0." + digits)), at));
    }
}
