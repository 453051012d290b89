package org.misecue.offers;

import java.util.List;
import java.util.Set;
import org.misecue.pantry.Allergen;

/**
 * The allergens that a substitute brings along, for whoever shows the offer.
 *
 * @param contains by nature, of the EU's fourteen
 * @param check what some makes have: the label tells
 * @param elsewhere what only the lists of other countries name, in plain words
 * @param known whether all of it is known to the pantry; where not, only the label tells
 */
public record Brings(Set<Allergen> contains, Set<Allergen> check, List<String> elsewhere, boolean known) {

    static final Brings UNKNOWN = new Brings(Set.of(), Set.of(), List.of(), false);
}
