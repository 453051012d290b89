package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;

/**
 * The names on the sides of an "or", each made whole: "dark or milk chocolate" is dark chocolate, or milk chocolate.
 *
 * @param name the first, which is the ingredient
 * @param others what may be used instead
 */
record Sides(String name, List<String> others) {

    private static final Cued OR = Cued.inAnyCase("\\h+(?:and/)?or\\h+|(?<=\\p{L}{3})\\h*/\\h*(?=\\p{L}{3})");
    private static final Pattern NUMBER = Pattern.compile("^[\\d½¼¾⅓⅔⅛/.]+\\h+");
    /** Words that need the noun of the other side: "vegetable or sunflower oil". */
    private static final Set<String> HALF_NAMES = Set.of(
            "vegetable",
            "sunflower",
            "olive",
            "rapeseed",
            "dark",
            "light",
            "milk",
            "white",
            "black",
            "plain",
            "caster",
            "brown",
            "strong",
            "golden",
            "red",
            "green",
            "cow's",
            "oat",
            "soy",
            "soya",
            "self-raising",
            "self-rising",
            "double",
            "heavy",
            "single",
            "whipping",
            "muscovado",
            "demerara",
            "icing",
            "cider",
            "fine",
            "coarse",
            "sea",
            "almond",
            "smooth",
            "crunchy",
            "creamy",
            "full-fat",
            "instant",
            "sweet",
            "hot",
            "mild");
    /** What is pressed, ground or boiled of many things, each of which is a food of its own: "lemon or orange juice". */
    private static final Set<String> MADE_OF = Set.of(
            "oil", "milk", "juice", "zest", "rind", "peel", "jam", "purée", "puree", "seeds", "flour", "vinegar");

    static Sides of(String text, Pantry pantry) {
        if (!OR.standsIn(Wording.of(text))) {
            return new Sides(text, List.of());
        }
        String[] sides = OR.pattern().split(text, -1);
        String other = NUMBER.matcher(sides[sides.length - 1].strip()).replaceFirst("");
        List<String> others = new ArrayList<>();
        for (int at = 1; at < sides.length; at++) {
            others.add(at < sides.length - 1 ? completed(sides[at].strip(), other, pantry) : sides[at].strip());
        }
        return new Sides(sides.length == 1 ? text : completed(sides[0].strip(), other, pantry), List.copyOf(others));
    }

    /** A side that names nothing by itself, with the end of the other side. */
    private static String completed(String side, String other, Pantry pantry) {
        List<String> words = Words.split(other);
        Optional<String> known = known(side, words, pantry);
        if (known.isPresent()) {
            return known.get();
        }
        if (pantry.heardAs(side).isPresent()) {
            return side; // milk is milk, whatever cream may stand for it
        }
        int more = Words.split(side).size();
        return words.size() > 1 && isHalf(Nouns.last(side), pantry)
                ? joined(side, words.subList(Math.min(more, words.size() - 1), words.size()))
                : side;
    }

    private static boolean isHalf(String word, Pantry pantry) {
        return describes(word)
                || (word.indexOf('-') > 0 && pantry.find(word).isEmpty())
                || NamePhrase.ADJECTIVES.contains(word.toLowerCase(Locale.ROOT))
                || PreparationWords.sort(word) != PreparationWords.Sort.OTHER;
    }

    /** Whether a word says which sort is meant, and so belongs to a name wherever it stands: "caster", "unsalted". */
    static boolean describes(String word) {
        return HALF_NAMES.contains(word.toLowerCase(Locale.ROOT))
                || PreparationWords.sort(word) == PreparationWords.Sort.KIND;
    }

    /** The side with that end of the other which makes it a name of the pantry. */
    private static Optional<String> known(String side, List<String> other, Pantry pantry) {
        boolean made = !side.contains(" ")
                && !side.equalsIgnoreCase("butter")
                && MADE_OF.contains(other.get(other.size() - 1).toLowerCase(Locale.ROOT));
        boolean half = !side.contains(" ") && describes(side);
        if (side.equals(String.join(" ", other))
                || (!made && !half && pantry.find(side).isPresent())) {
            return Optional.empty();
        }
        for (int from = 1; from < other.size(); from++) {
            String name = joined(side, other.subList(from, other.size()));
            if (pantry.heardAs(name).isPresent()) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    private static String joined(String side, List<String> end) {
        return side + " " + String.join(" ", end);
    }
}
