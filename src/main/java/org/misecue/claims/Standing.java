package org.misecue.claims;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Allergen;
import org.misecue.pantry.AllergenList;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.pantry.Substance;

/**
 * How one food stands to what a claim denies.
 *
 * @param why half a sentence: "plain flour contains wheat, a cereal containing gluten"; empty where nothing is known
 */
record Standing(Level level, String why) {

    /** From nothing known to certain. */
    enum Level {
        NOTHING_KNOWN,
        OPEN,
        CONTAINS
    }

    static Standing of(String name, Denial denial, Pantry pantry) {
        Optional<Ingredient> known = pantry.find(name);
        List<String> certain = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (Unsuited row : Unsuited.of(name, known, denial.key())) {
            (row.always() ? certain : open).add(row.why());
        }
        known.ifPresent(food -> {
            certain.addAll(substances(food.contains(), denial));
            open.addAll(substances(food.check(), denial).stream()
                    .map(what -> what.replaceFirst("^contains", "may contain") + ": the label tells")
                    .toList());
            open.addAll(kin(food, denial));
        });
        if (!certain.isEmpty()) {
            return new Standing(Level.CONTAINS, name + " " + joined(certain));
        }
        if (!open.isEmpty()) {
            return new Standing(Level.OPEN, name + " " + joined(open));
        }
        return known.isPresent()
                ? new Standing(Level.NOTHING_KNOWN, "")
                : new Standing(Level.OPEN, name + " is not known here: only its label tells");
    }

    private static String joined(List<String> parts) {
        return String.join(" and ", new LinkedHashSet<>(parts));
    }

    /** "contains wheat, a cereal containing gluten", "contains milk". */
    private static List<String> substances(Set<Substance> substances, Denial denial) {
        return substances.stream()
                .sorted()
                .filter(one -> denial.substances().contains(one.key())
                        || one.allergen().filter(denial.allergens()::contains).isPresent())
                .map(one -> "contains " + named(one))
                .toList();
    }

    private static String named(Substance one) {
        Optional<Allergen> allergen = one.allergen();
        boolean itself = allergen.map(Allergen::label).filter(one.key()::equals).isPresent();
        if (allergen.isEmpty() || itself) {
            return one.key();
        }
        return switch (allergen.get()) {
            case GLUTEN -> one == Substance.GLUTEN ? "gluten" : one.key() + ", a cereal containing gluten";
            case NUTS -> one == Substance.NUTS ? "nuts" : one.key() + ", a nut";
            default -> one.key();
        };
    }

    /** What is near to what is denied: an unnamed cereal or nut, and nuts of other countries' lists. */
    private static List<String> kin(Ingredient food, Denial denial) {
        List<String> open = new ArrayList<>();
        for (Substance one : food.contains().stream().sorted().toList()) {
            boolean unnamed = (one == Substance.GLUTEN
                            && denial.substances().stream().anyMatch(Standing::isCereal))
                    || (one == Substance.NUTS && denial.substances().stream().anyMatch(Standing::isNut));
            if (unnamed) {
                open.add("contains " + named(one) + " of a sort that is not named");
            }
            if (denial.allergens().contains(Allergen.NUTS) && one.allergen().isEmpty()) {
                open.add(
                        one.named(AllergenList.US).isEmpty()
                                        && one.named(AllergenList.AU_NZ).isEmpty()
                                ? "is on no list of nuts today, and some people avoid it with nuts"
                                : "is no nut of the EU's list, but on the lists of other countries");
            }
        }
        return open;
    }

    private static boolean isCereal(String substance) {
        return Set.of("wheat", "rye", "barley", "oats").contains(substance);
    }

    private static boolean isNut(String substance) {
        return Set.of("almond", "hazelnut", "walnut", "cashew", "pecan", "brazil nut", "pistachio", "macadamia")
                .contains(substance);
    }
}
