package org.misecue.recipe;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.quantity.QuantityReader;
import org.misecue.recipe.manuscript.Line;

/** Tells headings from other lines, and what a heading announces. */
final class Headings {

    /** What follows a heading. */
    enum Announces {
        INGREDIENTS,
        METHOD,
        /** Notes, storage, nutrition: nothing to cook. */
        OTHER,
        /** A part of the dish, by its name. */
        PART
    }

    private static final Cued INGREDIENTS = words(
            "(?:the\\h+)?ingredients(?:\\h+list)?|what\\h+you(?:'ll|’ll|\\h+will)?\\h+need|you(?:'ll|’ll|\\h+will)\\h+need|shopping\\h+list");
    private static final Cued METHOD = words(
            "(?:the\\h+)?(?:method|instructions?|directions?|steps|procedure|preparation)|how\\h+to(?:\\h+make)?(?:\\h+it|\\h+them)?"
                    + "|what\\h+to\\h+do|to\\h+make(?:\\h+it|\\h+them)?|making\\h+(?:it|them)|method\\h+of\\h+preparation");
    private static final Cued OTHER = words(
            "(?:cook'?’?s?\\h+|recipe\\h+)?(?:notes?|tips?|hints?)|(?:tips?|notes?)\\b.*|storage|storing|to\\h+store|nutrition(?:al)?\\b.*|equipment"
                    + "|special\\h+equipment|variations?|substitutions?|comments?|about\\b.*|allergens?|make\\h+ahead|leftovers"
                    + "|(?:you\\h+(?:may|might|will|'ll|’ll)\\h+(?:also\\h+)?(?:like|love|enjoy)|more\\h+recipes|related|(?:leave|post|add)\\h+a\\h+(?:reply|comment|review)"
                    + "|share\\h+this|faqs?|frequently\\h+asked|did\\h+you\\h+make|why\\h+you|serving\\h+suggestions?|newsletter|subscribe|sign\\h+up|watch)\\b.*|reviews?|video");
    private static final Cued FOR =
            Cued.inAnyCase("^for\\h+(?:the\\h+)?(.+)$|^to\\h+(?:finish|decorate|serve|assemble)$");
    private static final Pattern THE = Pattern.compile("^the\\h+");
    private static final Pattern STOP = Pattern.compile(".*[.,;:].*");
    private static final Pattern LETTER = Pattern.compile(".*\\p{L}.*");
    private static final Pattern CAPITALS = Pattern.compile("(?:\\p{Lu}\\S*(?:\\h+(?:and|with|&|of|\\p{Lu}\\S*))*+)");
    private static final Pattern TAIL = Pattern.compile("\\h*(?:\\([^)]*\\))?\\h*[:：]?\\h*$");
    private static final Cued INGREDIENTS_OF =
            Cued.inAnyCase("^ingredients\\h+for\\h+(?:the\\h+)?(.+)$|^(.+?)\\h+ingredients$");
    private static final int LONGEST = 8;

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private Headings() {}

    /** What the line announces if it is a heading; a line without marks must look like one. */
    static Optional<Announces> of(Line line, boolean amongIngredients) {
        if (line.is(Line.Kind.NUMBERED)
                || line.is(Line.Kind.ITEM) && !line.text().strip().endsWith(":")) {
            return Optional.empty();
        }
        String text = bare(line.text());
        if (line.is(Line.Kind.HEADING) || line.is(Line.Kind.TEXT)) {
            Optional<Announces> known = known(text);
            if (known.isPresent()) {
                return known;
            }
        }
        return line.is(Line.Kind.HEADING) || looksLikeOne(line, text, amongIngredients)
                ? Optional.of(Announces.PART)
                : Optional.empty();
    }

    /** The name of a part: "sponge" for "For the sponge:", "glaze" for "Glaze ingredients". */
    static String partName(String heading) {
        String text = bare(heading);
        var of = INGREDIENTS_OF.whole(text);
        if (of.isPresent()) {
            text = of.get().group(1) == null ? of.get().group(2) : of.get().group(1);
        }
        var aFor = FOR.whole(text);
        if (aFor.isPresent()) {
            String name = aFor.get().group(1) == null ? text : aFor.get().group(1);
            return name.equals(name.toUpperCase(Locale.ROOT)) ? name.toLowerCase(Locale.ROOT) : decapitalised(name);
        }
        boolean shouted = text.equals(text.toUpperCase(Locale.ROOT));
        return THE.matcher(shouted ? text.toLowerCase(Locale.ROOT) : decapitalised(text))
                .replaceFirst("");
    }

    private static Optional<Announces> known(String text) {
        if (INGREDIENTS.whole(text).isPresent()) {
            return Optional.of(Announces.INGREDIENTS);
        }
        if (METHOD.whole(text).isPresent()) {
            return Optional.of(Announces.METHOD);
        }
        return OTHER.whole(text).isPresent() ? Optional.of(Announces.OTHER) : Optional.empty();
    }

    private static boolean looksLikeOne(Line line, String text, boolean amongIngredients) {
        String whole = line.text().strip();
        if (Words.count(text) > LONGEST || QUANTITIES.beginsWithFigures(whole)) {
            return false;
        }
        boolean colon = whole.endsWith(":");
        boolean isFor = FOR.whole(text).isPresent() && !STOP.matcher(text).matches();
        if (line.is(Line.Kind.ITEM)) {
            return amongIngredients && colon;
        }
        boolean shouted = line.gap()
                && whole.length() > 3
                && whole.equals(whole.toUpperCase(Locale.ROOT))
                && LETTER.matcher(whole).matches();
        return isFor || (amongIngredients && (colon || shouted));
    }

    private static String bare(String text) {
        // Hundreds of blanks in a row would keep the pattern busy for minutes.
        String words = Words.BLANKS.matcher(text.strip()).replaceAll(" ");
        boolean tail = !words.isEmpty() && ":：) ".indexOf(words.charAt(words.length() - 1)) >= 0;
        return tail ? TAIL.matcher(words).replaceFirst("") : words;
    }

    private static String decapitalised(String name) {
        boolean allCapitals = CAPITALS.matcher(name).matches();
        return allCapitals
                ? name.toLowerCase(Locale.ROOT)
                : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private static Cued words(String regex) {
        return Cued.inAnyCase(regex);
    }
}
