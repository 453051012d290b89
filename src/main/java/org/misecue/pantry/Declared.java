package org.misecue.pantry;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** What one allergen list says about a name. There is no answer that means “none in it”. */
public sealed interface Declared {

    /** The pantry does not know the name, so only the label tells. */
    record Unknown(String name) implements Declared {

        @Override
        public String words() {
            return "not in the pantry: only the label tells";
        }
    }

    /**
     * What is known; two empty lists mean that nothing is known to the pantry, and the label still comes first.
     *
     * @param contains what is in it by nature, in the list's words
     * @param check what some makes of it contain, in the list's words, without what it contains for certain
     */
    record Known(Ingredient ingredient, List<String> contains, List<String> check) implements Declared {

        @Override
        public String words() {
            String certain = contains.isEmpty() ? "" : "contains " + String.join(", ", contains);
            String open = check.isEmpty() ? "" : "check the label: " + String.join(", ", check);
            String both = certain.isEmpty() || open.isEmpty() ? certain + open : certain + "; " + open;
            return both.isEmpty() ? "nothing known to the pantry: the label tells" : both;
        }
    }

    /** Half a sentence for a person. */
    String words();

    static Known of(Ingredient ingredient, AllergenList list) {
        List<String> contains = words(ingredient.contains(), list);
        List<String> check = words(ingredient.check(), list).stream()
                .filter(word -> !contains.contains(word))
                .toList();
        return new Known(ingredient, contains, check);
    }

    private static List<String> words(Collection<Substance> substances, AllergenList list) {
        return substances.stream()
                .sorted()
                .flatMap(one -> one.named(list).stream())
                .distinct()
                .collect(Collectors.toUnmodifiableList());
    }
}
