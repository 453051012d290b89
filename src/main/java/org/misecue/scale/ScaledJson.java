package org.misecue.scale;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** A recipe at another size for programs: the object {@code scaled} of {@code read --json}. */
public final class ScaledJson {

    private ScaledJson() {}

    /**
     * {@code factor}; {@code lines} in recipe order with {@code component}, {@code ingredient}, {@code amount} and
     * {@code unit} to weigh, {@code exact} in the unit of the recipe, {@code error} and {@code ofFlour} as shares of 1,
     * {@code grams} where known; {@code beside} with amount and unit where a second system is asked for, {@code inAll} for
     * all sets; {@code furthestOff} with ingredient and error, null where nothing was rounded; {@code takes} and
     * {@code spare}; {@code notes}.
     */
    public static ObjectNode of(ScaledSheet sheet) {
        ScaledRecipe scaled = sheet.scaled();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("takes", sheet.sets().takes());
        node.put("spare", sheet.sets().spare());
        put(node, "factor", Optional.of(scaled.factor()));
        ArrayNode lines = node.putArray("lines");
        for (int at = 0; at < scaled.lines().size(); at++) {
            WeighedLine line = scaled.lines().get(at);
            ObjectNode each = lines.addObject();
            each.put("component", line.component());
            each.put("ingredient", line.written().ingredient());
            measure(each, line.weighed());
            if (sheet.beside().isPresent()) {
                measure(
                        each.putObject("beside"),
                        sheet.beside().get().scaled().lines().get(at).weighed());
            }
            put(
                    each,
                    "inAll",
                    most(line.weighed())
                            .map(value ->
                                    value.multiply(Rationals.of(sheet.sets().all()))));
            put(each, "exact", most(line.exact()));
            put(each, "error", line.error());
            put(each, "grams", line.grams());
            put(each, "ofFlour", scaled.share(line));
        }
        scaled.furthestOff()
                .ifPresentOrElse(
                        line -> put(
                                node.putObject("furthestOff")
                                        .put("ingredient", line.written().ingredient()),
                                "error",
                                line.error()),
                        () -> node.putNull("furthestOff"));
        ArrayNode notes = node.putArray("notes");
        scaled.warnings()
                .forEach(note ->
                        notes.addObject().put("line", note.place().line()).put("note", note.sentence()));
        return node;
    }

    private static Optional<RationalNumber> most(Optional<Quantity> quantity) {
        return quantity.flatMap(each -> each.amount().most());
    }

    private static void measure(ObjectNode node, Optional<Quantity> quantity) {
        put(node, "amount", most(quantity));
        quantity.filter(each -> each.amount().most().isPresent())
                .ifPresentOrElse(each -> node.put("unit", each.unit().code()), () -> node.putNull("unit"));
    }

    private static void put(ObjectNode node, String key, Optional<RationalNumber> value) {
        value.ifPresentOrElse(number -> node.put(key, Rationals.decimal(number)), () -> node.putNull(key));
    }
}
