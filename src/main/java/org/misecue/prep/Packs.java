package org.misecue.prep;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Quantity;

/**
 * What to take off the shelf for one line of the list.
 *
 * @param packs largest first
 * @param over what is left beyond the need; empty where the need has no weight that is known
 */
public record Packs(List<Pack> packs, Optional<Quantity> over) {

    static final Packs LOOSE = new Packs(List.of(), Optional.empty());
}
