package org.misecue.shots;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One thing for the presenter to say: "bake for | fifty minutes", "one hundred grams | of caster sugar".
 *
 * @param before the words before the figure; may be empty
 * @param figure what viewers must not miss
 * @param after the words after it; may be empty
 */
public record Saying(String before, String figure, String after) {

    /** The whole in one line. */
    public String words() {
        return Stream.of(before, figure, after).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }
}
