package org.misecue.prep;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Quantity;

/**
 * One line of the shopping list, for all components and takes together.
 *
 * @param aisle where a shop has it; "other" where the pantry does not know it
 * @param ingredient what to ask for
 * @param quantity rounded up; empty where the recipe states no amount
 * @param packs what to take off the shelf for it
 * @param remarks "and some for greasing", "optional"
 */
public record Purchase(
        String aisle, String ingredient, Optional<Quantity> quantity, Packs packs, List<String> remarks) {}
