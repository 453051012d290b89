package org.misecue.publish;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.misecue.pantry.Allergen;
import org.misecue.pantry.Ingredient;

/**
 * The allergens of one ingredient line, by the words in it and by what the pantry knows of the ingredient; where the
 * two differ, both count.
 *
 * @param text the line with each allergen made to stand out, and named in brackets where its word does not name it
 * @param contains what is in it by nature, with the names for the "Contains" line
 * @param elsewhere what is in it by nature and only the lists of other countries name
 * @param check what some makes of it contain
 */
record AllergenLine(String text, List<Named> contains, List<String> elsewhere, Set<Allergen> check) {

    /** An allergen and what it is called here: gluten as "wheat", nuts as "almonds"; empty for its own name. */
    record Named(Allergen allergen, String called) {}

    /**
     * @param text the line without its amount, in safe characters
     * @param ingredient the part of it that names the ingredient
     */
    static AllergenLine of(
            String text, String ingredient, Optional<Ingredient> known, UnaryOperator<String> emphasis, Labels labels) {
        List<AllergenWords.Match> matches = AllergenWords.standard().in(text);
        Set<Named> contains = new LinkedHashSet<>();
        Set<Allergen> check = EnumSet.noneOf(Allergen.class);
        for (AllergenWord row :
                matches.stream().flatMap(match -> match.rows().stream()).toList()) {
            row.substance().ifPresent(substance -> {
                if (row.how() == AllergenWord.How.CHECK) {
                    check.add(substance);
                } else {
                    contains.add(new Named(substance, row.called()));
                }
            });
        }
        Set<Allergen> byWords = contains.stream().map(Named::allergen).collect(Collectors.toSet());
        List<Named> silent = known.stream()
                .flatMap(one -> one.allergens().stream())
                .filter(allergen -> !byWords.contains(allergen))
                .sorted()
                .map(allergen -> new Named(allergen, ""))
                .toList();
        contains.addAll(silent);
        known.ifPresent(one -> check.addAll(one.checkLabel()));
        contains.forEach(named -> check.remove(named.allergen()));
        return new AllergenLine(
                withSilent(emphasised(text, matches, emphasis, labels), ingredient, silent, emphasis, labels),
                List.copyOf(contains),
                known.map(Ingredient::elsewhere).orElse(List.of()),
                check);
    }

    private static String emphasised(
            String text, List<AllergenWords.Match> matches, UnaryOperator<String> emphasis, Labels labels) {
        StringBuilder out = new StringBuilder();
        int done = 0;
        for (AllergenWords.Match match : matches) {
            List<AllergenWord> told = match.rows().stream()
                    .filter(row -> row.substance().isPresent() && row.how() != AllergenWord.How.CHECK)
                    .toList();
            if (told.isEmpty()) {
                continue;
            }
            out.append(text, done, match.from());
            out.append(emphasis.apply(text.substring(match.from(), match.to())));
            done = match.to();
            String names = told.stream()
                    .filter(row -> row.how() == AllergenWord.How.SAYS)
                    .map(row -> emphasis.apply(labels.allergen(row.called())))
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (!names.isEmpty()) {
                out.append(" (").append(names).append(')');
            }
        }
        return out.append(text, done, text.length()).toString();
    }

    /** What only the pantry knows stands in brackets after the ingredient's name. */
    private static String withSilent(
            String text, String ingredient, List<Named> silent, UnaryOperator<String> emphasis, Labels labels) {
        if (silent.isEmpty()) {
            return text;
        }
        String brackets = silent.stream()
                .map(named -> emphasis.apply(labels.allergen(named.allergen())))
                .collect(Collectors.joining(", ", " (", ")"));
        int at = text.toLowerCase(Locale.ROOT).indexOf(ingredient.toLowerCase(Locale.ROOT));
        int end = at < 0 ? text.length() : at + ingredient.length();
        return text.substring(0, end) + brackets + text.substring(end);
    }

    /** Whether neither words nor pantry name an allergen; that says nothing about there being none. */
    boolean nothing() {
        return contains.isEmpty() && elsewhere.isEmpty() && check.isEmpty();
    }
}
