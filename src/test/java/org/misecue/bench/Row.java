package org.misecue.bench;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * One row of a truth or of a comparison; both documents name things alike, and a field that only the other one has is
 * empty.
 *
 * @param amount what is written
 * @param at where the cues with the deciding words begin, in seconds
 * @param spoken what the truth says was said, for people
 * @param why the truth's reason
 * @param evidence the moments that a comparison shows
 */
record Row(
        String kind,
        String component,
        String ingredient,
        OptionalDouble amount,
        String unit,
        String verdict,
        List<Double> at,
        String spoken,
        String why,
        List<Shown> evidence) {

    /** A moment shown, in seconds, and what was heard there. */
    record Shown(double at, String heard) {
        @Override
        public String toString() {
            return heard + " at " + at;
        }
    }

    static Row of(JsonNode json) {
        JsonNode amount = json.path("amount");
        return new Row(
                text(json, "kind"),
                text(json, "component"),
                text(json, "ingredient"),
                amount.isNumber() ? OptionalDouble.of(amount.asDouble()) : OptionalDouble.empty(),
                text(json, "unit"),
                text(json, "verdict"),
                stream(json, "at").map(JsonNode::asDouble).toList(),
                measure(json, "spoken", "spokenUnit"),
                text(json, "why"),
                stream(json, "evidence")
                        .map(one -> new Shown(one.path("at").asDouble(-99), measure(one, "amount", "unit")))
                        .toList());
    }

    /** What it is a row of. */
    String name() {
        return ingredient.isEmpty() ? kind : ingredient;
    }

    String written() {
        return (amount.isPresent() ? plain(amount.getAsDouble()) : "?") + " " + unit;
    }

    Row with(double other) {
        return new Row(kind, component, ingredient, OptionalDouble.of(other), unit, verdict, at, spoken, why, evidence);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    private static String measure(JsonNode json, String amount, String unit) {
        return (text(json, amount) + " " + text(json, unit)).strip();
    }

    private static String text(JsonNode json, String name) {
        return json.path(name).asText("");
    }

    private static Stream<JsonNode> stream(JsonNode json, String name) {
        return StreamSupport.stream(json.path(name).spliterator(), false);
    }
}
