package org.misecue.prep;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Allergen;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;

/**
 * The allergens of Annex II to Regulation (EU) 1169/2011 that the contents carry. An empty set means that none is known,
 * never that there is none.
 *
 * @param certain carried by nature
 * @param elsewhere carried by nature too, but named only by the lists of the US or of Australia and New Zealand
 * @param checkLabel carried by some makes
 * @param unknown ingredients that the pantry does not know, so that only the label tells
 */
public record Carries(Set<Allergen> certain, Set<String> elsewhere, Set<Allergen> checkLabel, Set<String> unknown) {

    static Carries of(List<IngredientLine> lines, Pantry pantry) {
        Set<Allergen> certain = EnumSet.noneOf(Allergen.class);
        Set<String> elsewhere = new TreeSet<>();
        Set<Allergen> checkLabel = EnumSet.noneOf(Allergen.class);
        Set<String> unknown = new TreeSet<>();
        for (IngredientLine line : lines) {
            for (String name : Stream.concat(Stream.of(line.ingredient()), line.alternatives().stream())
                    .toList()) {
                pantry.find(name)
                        .ifPresentOrElse(
                                known -> {
                                    certain.addAll(known.allergens());
                                    elsewhere.addAll(known.elsewhere());
                                    checkLabel.addAll(known.checkLabel());
                                },
                                () -> unknown.add(name));
            }
        }
        checkLabel.removeAll(certain);
        return new Carries(
                Collections.unmodifiableSet(certain),
                Collections.unmodifiableSet(elsewhere),
                Collections.unmodifiableSet(checkLabel),
                Collections.unmodifiableSet(unknown));
    }

    /** "EGGS, MILK", in the order of the annex, then what only other lists name; empty where none is known. */
    public String certainWords() {
        return Stream.concat(
                        certain.stream().map(Carries::capitals),
                        elsewhere.stream().map(name -> name.toUpperCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
    }

    /** "check the label: SOYBEANS; fairy dust is not in the pantry"; empty where nothing is open. */
    public String openWords() {
        String check = checkLabel.stream().map(Carries::capitals).collect(Collectors.joining(", "));
        String strange = unknown.isEmpty() ? "" : "for " + Wording.list(unknown);
        String both = check.isEmpty() || strange.isEmpty() ? check + strange : check + "; " + strange;
        return both.isEmpty() ? "" : "check the label: " + both;
    }

    private static String capitals(Allergen allergen) {
        return allergen.name();
    }
}
