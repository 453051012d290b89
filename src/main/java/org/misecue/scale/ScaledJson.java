package org.misecue.scale;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** A recipe at another size for programs: the object {@code scaled} of {@code read --json}. */
public final class ScaledJson {

    private ScaledJson() {}

    /**
     * {@code factor}; {@code lines} in recipe order with {@code component}, {@code ingredient}, {@code amount} and
     * {@code unit} to weigh, {@code exact} in the unit of the recipe, {@code error} and {@code ofFlour} as shares of 1,
     * {@code grams} where known; {@code notes}.
     */
    public static ObjectNode of(ScaledRecipe scaled) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        put(node, "factor", Optional.of(scaled.factor()));
        ArrayNode lines = node.putArray("lines");
        for (WeighedLine line : scaled.lines()) {
            ObjectNode each = lines.addObject();
            each.put("component", line.component());
            each.put("ingredient", line.written().ingredient());
            put(each, "amount", line.weighed().flatMap(quantity -> quantity.amount()
                    .most()));
            line.weighed()
                    .filter(quantity -> quantity.amount().most().isPresent())
                    .ifPresentOrElse(
                            quantity -> each.put("unit", quantity.unit().code()), () -> each.putNull("unit"));
            put(each, "exact", line.exact().flatMap(quantity -> quantity.amount()
                    .most()));
            put(each, "error", line.error());
            put(each, "grams", line.grams());
            put(each, "ofFlour", scaled.share(line));
        }
        ArrayNode notes = node.putArray("notes");
        scaled.warnings()
                .forEach(note ->
                        notes.addObject().put("line", note.place().line()).put("note", note.sentence()));
        return node;
    }

    private static void put(ObjectNode node, String key, Optional<RationalNumber> value) {
        value.ifPresentOrElse(number -> node.put(key, Rationals.decimal(number)), () -> node.putNull(key));
    }
}
