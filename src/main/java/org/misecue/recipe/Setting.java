package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.quantity.Quantity;

/**
 * A written figure that is no ingredient.
 *
 * @param kind what it sets
 * @param quantity the figure; of an oven the conventional one in the unit written first
 * @param fan the fan figure of an oven where one is written
 * @param also other figures for the same thing: °F or gas for an oven, inches for a tin
 * @param what the words around it: "bake", "prove", "round cake tin", "slices"
 * @param count how many: 2 for "two 20 cm round tins"
 * @param step the step that states it, from 1; 0 for the recipe as a whole
 * @param line where it stands in the file, from 1; 0 where the document has no lines
 * @param depth of a tin, where one is written
 */
public record Setting(
        Kind kind,
        Quantity quantity,
        Optional<Quantity> fan,
        List<Quantity> also,
        String what,
        int count,
        int step,
        int line,
        Optional<Quantity> depth) {

    /** A setting that has no depth: anything but a tin, and most tins. */
    public Setting(
            Kind kind,
            Quantity quantity,
            Optional<Quantity> fan,
            List<Quantity> also,
            String what,
            int count,
            int step,
            int line) {
        this(kind, quantity, fan, also, what, count, step, line, Optional.empty());
    }

    /** All that is written for it: the figure itself, the fan oven's, those in other units. */
    public List<Quantity> figures() {
        return Stream.of(Stream.of(quantity), fan.stream(), also.stream())
                .flatMap(each -> each)
                .toList();
    }

    /** The kinds, with their names in the JSON documents. */
    public enum Kind {
        OVEN_TEMPERATURE("oven-temperature"),
        DURATION("duration"),
        YIELD("yield"),
        PAN("pan");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }
}
