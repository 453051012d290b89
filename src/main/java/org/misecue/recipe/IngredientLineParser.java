package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.recipe.manuscript.Line;

/** Reads one line of the ingredient list: amount, name, preparation, alternatives. */
final class IngredientLineParser {

    private static final Pattern OPTIONAL = Pattern.compile(
            "\\h*[,;–-]?\\h*\\(?\\b(?:optional|if\\h+(?:you\\h+)?(?:using|like|wish|liked|desired))\\b:?\\h*\\)?",
            Pattern.CASE_INSENSITIVE);
    /** What is taken of a fruit or an egg that is counted. */
    static final String FRUIT_PART = "zest|rind|peel|juice|seeds|pulp|flesh|whites?|yolks?";

    private static final Pattern PART_OF = Pattern.compile(
            "^(?:the\\h+)?(?<how>(?:(?:finely|coarsely|freshly)\\h+)?(?:(?:grated|pared|squeezed|sieved|strained)\\h+)?)"
                    + "(?<part>(?:" + FRUIT_PART + ")(?:\\h+(?:and|&)\\h+(?:(?:finely|grated)\\h+)*(?:" + FRUIT_PART
                    + "))?)\\h+(?:(?:of|from)\\h+|(?=[\\d½¼¾]|half\\b|one\\b|two\\b))(?<rest>.+)$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BRACKET = Pattern.compile("\\h*\\(([^()]*)\\)");

    /** Nobody says more than this about one ingredient; what is longer is something else. */
    static final int LONGEST = 400;

    private static final Pattern SPACES = Pattern.compile("[\\h\\v]+");
    /** A capital C counts degrees elsewhere; before an ingredient it can only be a cup. */
    private static final Pattern CUPS = Pattern.compile("^([\\d/½¼¾⅓⅔⅛][\\d/½¼¾⅓⅔⅛.\\h-]*)C(?=\\.?\\h+\\p{L})");

    /** The signs of a footnote. */
    private static final Pattern MARKS = Pattern.compile("[*†‡¹²³]+(?=$|,)");

    private final QuantityReader quantities = new QuantityReader();
    private final Pantry pantry;

    /** @param pantry whose names tell where a name begins and ends */
    IngredientLineParser(Pantry pantry) {
        this.pantry = pantry;
    }

    IngredientLine parse(Line line) {
        if (line.text().length() > LONGEST) {
            return unread(line, false);
        }
        String text = SPACES.matcher(line.text()).replaceAll(" ").strip();
        boolean optional = OPTIONAL.matcher(text).find();
        String certain = optional ? OPTIONAL.matcher(text).replaceAll(" ") : text;
        String plain =
                CUPS.matcher(MARKS.matcher(certain).replaceAll("").strip()).replaceFirst("$1c");
        Optional<WrittenQuantity> first = amount(plain);
        if (first.isEmpty() && beginsWithFigures(plain)) {
            return unread(line, optional);
        }
        Matcher partOf = PART_OF.matcher(plain);
        if (partOf.matches()) {
            return ofPart(line, partOf, optional);
        }
        Optional<AmountBehind> behind = first.isPresent() ? Optional.empty() : AmountBehind.in(plain, quantities);
        Optional<WrittenQuantity> written = first.or(() -> behind.map(AmountBehind::amount));
        String rest = behind.map(AmountBehind::rest)
                .orElseGet(() -> first.map(each -> plain.substring(each.end())).orElse(plain));
        Optional<Quantity> alternative =
                written.flatMap(WrittenQuantity::alternative).or(() -> inBrackets(rest));
        NamePhrase phrase = NamePhrase.of(
                withoutAmounts(rest), written.map(WrittenQuantity::packing).orElse(""), pantry);
        return new IngredientLine(
                line.text(),
                line.number(),
                written.map(WrittenQuantity::quantity),
                alternative,
                written.map(WrittenQuantity::packing).orElse(""),
                phrase.name(),
                phrase.preparation(),
                optional,
                phrase.alternatives());
    }

    /** Whether the line begins with figures that make no amount: 0 g, −5 g, ½½. */
    boolean refuses(IngredientLine line) {
        return line.quantity().isEmpty()
                && line.text().length() <= LONGEST
                && beginsWithFigures(line.text())
                && amount(line.text()).isEmpty();
    }

    /** Figures that count or measure; "70% chocolate" and "00 flour" are names. */
    private boolean beginsWithFigures(String text) {
        return quantities.beginsWithFigures(text) && !text.matches("\\h*(?:\\d+\\h?%|0+\\h+flour).*");
    }

    private Optional<WrittenQuantity> amount(String text) {
        return quantities.read(text).filter(IngredientLineParser::measuresFood);
    }

    /** A line whose figures make no amount is kept as it stands: no part of it may be taken for a name or an amount. */
    private static IngredientLine unread(Line line, boolean optional) {
        return new IngredientLine(
                line.text(),
                line.number(),
                Optional.empty(),
                Optional.empty(),
                "",
                line.text().strip(),
                "",
                optional,
                List.of());
    }

    /** "Zest of 2 lemons" is two lemons for their zest: the ingredient is lemon zest. */
    private IngredientLine ofPart(Line line, Matcher partOf, boolean optional) {
        String rest = partOf.group("rest");
        Optional<WrittenQuantity> written = amount(rest);
        NamePhrase fruit =
                NamePhrase.of(written.map(each -> rest.substring(each.end())).orElse(rest), "", pantry);
        String part = partOf.group("part")
                .toLowerCase(Locale.ROOT)
                .replaceAll("(?:finely|grated)\\h+", "")
                .replace("&", "and");
        List<String> preparation =
                new ArrayList<>(List.of(partOf.group("how").strip().toLowerCase(Locale.ROOT), fruit.preparation()));
        preparation.removeIf(String::isEmpty);
        return new IngredientLine(
                line.text(),
                line.number(),
                written.map(WrittenQuantity::quantity),
                written.flatMap(WrittenQuantity::alternative),
                written.map(WrittenQuantity::packing).orElse(""),
                Nouns.singular(fruit.name()) + " " + part,
                String.join(", ", preparation),
                optional,
                fruit.alternatives());
    }

    private Optional<Quantity> inBrackets(String rest) {
        return BRACKET.matcher(rest)
                .results()
                .map(MatchResult::group)
                .map(this::onlyAnAmount)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private String withoutAmounts(String rest) {
        return BRACKET.matcher(rest)
                .replaceAll(found ->
                        onlyAnAmount(found.group()).isPresent() ? "" : Matcher.quoteReplacement(found.group()));
    }

    /** The quantity of a bracket that holds nothing else, as in "3 eggs (about 150 g)". */
    private Optional<Quantity> onlyAnAmount(String bracket) {
        String inner = bracket.strip()
                .replaceAll("^\\(|\\)$", "")
                .replaceAll(
                        "(?i)\\h+(?:in total|total|in all|altogether|(?:(?:un)?peeled|stoned|pitted|prepared|drained|trimmed|shelled|net|total)?\\h*weight)$",
                        "")
                .strip();
        return quantities
                .read(inner)
                .filter(written -> written.end() == inner.length())
                .map(WrittenQuantity::quantity)
                .filter(quantity -> quantity.dimension() == Dimension.MASS || quantity.dimension() == Dimension.VOLUME);
    }

    private static boolean measuresFood(WrittenQuantity written) {
        return switch (written.quantity().dimension()) {
            case MASS, VOLUME, COUNT, SMIDGEN, LENGTH -> true;
            case TEMPERATURE, DURATION -> false;
        };
    }
}
