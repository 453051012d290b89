package org.misecue.prep;

import java.util.List;

/**
 * A little more than the recipe needs, because it is likely to be wanted on a filming day.
 *
 * @param content what and how much, once for all takes
 * @param kind what it is for
 * @param step where it is wanted first; 0 where no step names it
 * @param bowls the numbers of the bowls that it stands by for
 * @param why the reason, a sentence
 * @param source of the reason
 * @param allergens what it carries
 */
public record Spare(
        Content content, Kind kind, int step, List<Integer> bowls, String why, String source, Carries allergens) {

    /** What a spare is for. */
    public enum Kind {
        FAILURE("if it fails"),
        HERO("for the hero shot");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
