package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Quantity;

/**
 * One line of the ingredient list.
 *
 * @param text the line as written, never changed
 * @param line where it stands in the file, from 1; 0 where the document has no lines
 * @param quantity how much; empty for "salt"
 * @param alternative the same amount in another system, as written: the 7 oz of "200 g (7 oz)"
 * @param packing what it comes in where that is counted: the "tin" of "1 x 400 g tin"; empty otherwise
 * @param ingredient the name, without amount and preparation: "unsalted butter"
 * @param preparation what follows the name: "softened"; empty where nothing does
 * @param optional whether the line says so
 * @param alternatives other ingredients that the line offers with "or"
 */
public record IngredientLine(
        String text,
        int line,
        Optional<Quantity> quantity,
        Optional<Quantity> alternative,
        String packing,
        String ingredient,
        String preparation,
        boolean optional,
        List<String> alternatives) {}
