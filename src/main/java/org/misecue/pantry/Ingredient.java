package org.misecue.pantry;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is known about one ingredient. Two are equal if they have the same name: a large and a medium egg weigh
 * differently and are both the egg of the pantry.
 *
 * @param name the usual British name, singular where it is counted
 * @param names other written names and spellings, of any English
 * @param heard what speech recognisers write for it besides
 * @param kind how it fills a measure: flour, liquid …; decides the usual spread
 * @param weights grams per measure, empty where none is known
 * @param contains what it carries by nature
 * @param check what some makes of it carry: "check the label"
 * @param storage where it is kept
 * @param aisle where a shop has it, such as "dairy" or "baking"
 * @param beware names of it that mean something else to others, each with one sentence
 * @param source where the names and the allergens come from
 */
public record Ingredient(
        String name,
        List<String> names,
        List<String> heard,
        String kind,
        List<Weight> weights,
        Set<Substance> contains,
        Set<Substance> check,
        Storage storage,
        String aisle,
        Map<String, String> beware,
        String source) {

    /** What it carries by nature, of the EU's fourteen. */
    public Set<Allergen> allergens() {
        return of14(contains);
    }

    /** What some makes of it carry, of the EU's fourteen, without what it carries for certain. */
    public Set<Allergen> checkLabel() {
        Set<Allergen> open = of14(check);
        open.removeAll(of14(contains));
        return open;
    }

    /** What it carries by nature that only the lists of other countries name, in plain words: "pine nut". */
    public List<String> elsewhere() {
        return contains.stream()
                .filter(one -> one.allergen().isEmpty())
                .filter(one -> !one.named(AllergenList.US).isEmpty()
                        || !one.named(AllergenList.AU_NZ).isEmpty())
                .map(Substance::key)
                .sorted()
                .toList();
    }

    private static Set<Allergen> of14(Collection<Substance> substances) {
        Set<Allergen> allergens = EnumSet.noneOf(Allergen.class);
        substances.forEach(one -> one.allergen().ifPresent(allergens::add));
        return allergens;
    }

    /** Whether it is kept in the fridge. */
    public boolean chilled() {
        return storage == Storage.FRIDGE;
    }

    Ingredient weighing(List<Weight> other) {
        return new Ingredient(
                name, names, heard, kind, List.copyOf(other), contains, check, storage, aisle, beware, source);
    }

    Ingredient named(List<String> other) {
        return new Ingredient(
                name, List.copyOf(other), heard, kind, weights, contains, check, storage, aisle, beware, source);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ingredient ingredient && name.equals(ingredient.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
