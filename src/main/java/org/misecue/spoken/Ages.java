package org.misecue.spoken;

import java.util.Set;
import org.misecue.quantity.Rationals;

/** Whether a number is somebody's age, or a year. */
final class Ages {

    private static final Set<String> IS = Set.of("is", "was", "are", "were", "turned", "turns", "be");
    private static final Set<String> PERSON = Words.set(
            "who he she they kid kids son daughter boy girl twins nephew niece grandson granddaughter child children");
    private static final Set<String> BEFORE_YEAR = Set.of("in", "since", "from", "of", "till", "until", "about");

    private final WordStream words;

    Ages(WordStream words) {
        this.words = words;
    }

    boolean isAge(SpokenQuantity said) {
        String around = words.normal(said.start() - 8, said.end() + 4);
        if (around.contains("birthday") || around.contains("years old")) {
            return true;
        }
        boolean young = said.amount().least().orElse(Rationals.ZERO).compareTo(Rationals.of(110)) < 0;
        return young
                && IS.contains(words.text(said.start() - 1))
                && PERSON.contains(words.text(said.start() - 2))
                && !words.text(said.end()).equals("of");
    }

    boolean isYear(SpokenQuantity said) {
        boolean inRange = said.amount()
                .least()
                .filter(value -> value.compareTo(Rationals.of(1900)) >= 0 && value.compareTo(Rationals.of(2099)) <= 0)
                .isPresent();
        return inRange && BEFORE_YEAR.contains(words.text(said.start() - 1));
    }
}
