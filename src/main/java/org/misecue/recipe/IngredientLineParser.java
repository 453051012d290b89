package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Packings;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.recipe.manuscript.Line;

/** Reads one line of the ingredient list: amount, name, preparation, alternatives. */
final class IngredientLineParser {

    /** Nobody says more than this about one ingredient; what is longer is something else. */
    static final int LONGEST = 400;

    /** The rest of a sum behind the name: the "2 T." of "1 c. flour + 2 T.". */
    private static final Cued SUM_BEHIND =
            Cued.inAnyCase("(?<name>[^,;(]+?)\\h+(?:plus|\\+|&|and)\\h+(?<more>[\\d½¼¾⅓⅔⅛].*)");
    /** Another amount of the same: "1 sachet or 2 tsp dried yeast". */
    private static final Cued OR_AMOUNT = Cued.inAnyCase("or\\h+(?<other>(?:[\\d½¼¾⅓⅔⅛]|(?:an?|one|two|half)\\b).*)");
    /** What the line is for, before its amount: "egg wash: 1 egg". */
    private static final Pattern LABEL = Pattern.compile("(?<label>\\p{L}[^:\\d]{2,39}):\\h*(?<rest>.+)");

    private static final Pattern PURPOSE = Pattern.compile("(?:for|to)\\h", Pattern.CASE_INSENSITIVE);
    /** A packing of which one is meant: "small bunch of mint", "packet of biscuits". */
    private static final Pattern ONE_PACKING = Pattern.compile(
            "(?:(?:small|medium|large|big|\\p{L}+-sized?)\\h+\\p{L}+|\\p{L}+\\h+of)\\b.*", Pattern.CASE_INSENSITIVE);

    /** "Tin of condensed milk (397 g)", "pkt ginger nuts (200g)": one pack, and what it holds. */
    private static final Pattern WEIGHED_PACK =
            Pattern.compile("(?<word>\\p{L}+)\\.?\\h+(?<of>of\\h+)?[^,;()\\d]*\\([^()]*\\d.*");

    private static final Pattern NAMING_FIGURES = Pattern.compile("\\h*(?:\\d+\\h?%|0+\\h+flour).*");

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private final Pantry pantry;

    /** @param pantry whose names tell where a name begins and ends */
    IngredientLineParser(Pantry pantry) {
        this.pantry = pantry;
    }

    IngredientLine parse(Line line) {
        if (line.text().length() > LONGEST) {
            return unread(line, false);
        }
        TidyLine tidy = TidyLine.of(line.text());
        Optional<WrittenQuantity> first = amount(tidy.text().text());
        if (first.isEmpty() && beginsWithFigures(tidy.text().text())) {
            return unread(line, tidy.optional());
        }
        return new Reading(line, tidy.optional()).of(tidy.text(), first);
    }

    /** Whether the line begins with figures that make no amount: 0 g, −5 g, ½½. */
    static boolean refuses(IngredientLine line) {
        return line.quantity().isEmpty()
                && line.text().length() <= LONGEST
                && beginsWithFigures(line.text())
                && amount(line.text()).isEmpty();
    }

    /** Figures that count or measure; "70% chocolate" and "00 flour" are names. */
    private static boolean beginsWithFigures(String text) {
        return QUANTITIES.beginsWithFigures(text)
                && !NAMING_FIGURES.matcher(text).matches();
    }

    private static Optional<WrittenQuantity> amount(String text) {
        return QUANTITIES.read(text).filter(IngredientLineParser::measuresFood);
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

    private static boolean measuresFood(WrittenQuantity written) {
        return switch (written.quantity().dimension()) {
            case MASS, VOLUME, COUNT, SMIDGEN, LENGTH -> true;
            case TEMPERATURE, DURATION -> false;
        };
    }

    /** The reading of one line: each way in which people order amount and name is tried in turn. */
    private final class Reading {

        private final Line line;
        private final boolean optional;

        private Reading(Line line, boolean optional) {
            this.line = line;
            this.optional = optional;
        }

        IngredientLine of(Wording wording, Optional<WrittenQuantity> first) {
            String plain = wording.text();
            return FruitPart.in(wording)
                    .flatMap(this::ofPart)
                    .or(() -> first.map(written -> amountFirst(plain, written)))
                    .or(() -> isWeighedPack(plain) ? packing("1 " + plain) : Optional.empty())
                    .or(() -> AmountBehind.in(plain, QUANTITIES)
                            .map(behind -> line(Optional.of(behind.amount()), behind.rest())))
                    .or(() -> labelled(plain))
                    .or(() -> onePacking(plain))
                    .orElseGet(() -> line(Optional.empty(), plain));
        }

        /** "Zest of 2 lemons" is two lemons for their zest: the ingredient is lemon zest. */
        private Optional<IngredientLine> ofPart(FruitPart part) {
            IngredientLine fruit = of(Wording.of(part.rest()), amount(part.rest()));
            List<String> preparation = new ArrayList<>(part.preparation());
            preparation.add(fruit.preparation());
            return fruit.ingredient().isEmpty()
                    ? Optional.empty()
                    : Optional.of(renamed(fruit, part.of(fruit.ingredient()), joined(preparation)));
        }

        private IngredientLine amountFirst(String plain, WrittenQuantity written) {
            String rest = plain.substring(written.end());
            Wording wording = Wording.of(rest);
            Optional<Matcher> sum = SUM_BEHIND.whole(wording);
            if (sum.isPresent()) {
                String amounts = plain.substring(0, written.end()).strip() + " plus "
                        + sum.get().group("more");
                Optional<WrittenQuantity> both = amount(amounts).filter(all -> all.end() == amounts.length());
                if (both.isPresent()) {
                    return line(both, sum.get().group("name"));
                }
            }
            Optional<String> other = OR_AMOUNT.whole(wording).map(or -> or.group("other"));
            IngredientLine read = line(
                    Optional.of(written),
                    other.flatMap(text -> amount(text).map(second -> text.substring(second.end())))
                            .filter(name -> !name.isBlank())
                            .orElse(rest));
            return read.ingredient().isEmpty() && !read.packing().isEmpty() ? namedByPacking(plain, written) : read;
        }

        /** "3 cloves": nothing is packed in them. */
        private IngredientLine namedByPacking(String plain, WrittenQuantity written) {
            String amount = plain.substring(0, written.end()).strip();
            String packing = Nouns.last(amount);
            Optional<WrittenQuantity> count = amount(amount.substring(0, amount.length() - packing.length()));
            return line(count.isPresent() ? count : Optional.of(written), packing + plain.substring(written.end()));
        }

        /** What a label is for is told behind the name, unless only the label names a thing: "chocolate: 50 g dark". */
        private Optional<IngredientLine> labelled(String plain) {
            Matcher found = LABEL.matcher(plain);
            if (!found.matches()) {
                return Optional.empty();
            }
            String label = NamePhrase.tidy(found.group("label"));
            String rest = found.group("rest");
            return amount(rest)
                    .map(written -> amountFirst(rest, written))
                    .filter(read -> isKnown(read.ingredient()) || !isKnown(label))
                    .or(() -> PURPOSE.matcher(label).lookingAt()
                            ? Optional.of(line(Optional.empty(), rest))
                            : Optional.empty())
                    .map(read -> renamed(read, read.ingredient(), joined(List.of(read.preparation(), label))));
        }

        private IngredientLine renamed(IngredientLine read, String name, String preparation) {
            return new IngredientLine(
                    read.text(),
                    read.line(),
                    read.quantity(),
                    read.alternative(),
                    read.packing(),
                    name,
                    preparation,
                    optional,
                    read.alternatives());
        }

        private boolean isKnown(String name) {
            return pantry.find(name).isPresent();
        }

        private Optional<IngredientLine> onePacking(String plain) {
            return ONE_PACKING.matcher(plain).matches() ? packing("1 " + plain) : Optional.empty();
        }

        private Optional<IngredientLine> packing(String counted) {
            return amount(counted)
                    .filter(written -> !written.packing().isEmpty())
                    .map(written -> amountFirst(counted, written));
        }

        private static boolean isWeighedPack(String plain) {
            Matcher pack = WEIGHED_PACK.matcher(plain);
            return pack.matches()
                    && (pack.start("of") >= 0
                            || Packings.holds(pack.group("word").toLowerCase(Locale.ROOT)));
        }

        private IngredientLine line(Optional<WrittenQuantity> written, String text) {
            BracketAmounts brackets = written.isPresent()
                    ? BracketAmounts.in(text, QUANTITIES)
                    : new BracketAmounts(Optional.empty(), false, text);
            Optional<Quantity> content = written.filter(WrittenQuantity::isPack).flatMap(brackets::content);
            NamePhrase phrase = NamePhrase.of(
                    brackets.rest(), written.map(WrittenQuantity::packing).orElse(""), pantry);
            return new IngredientLine(
                    line.text(),
                    line.number(),
                    content.or(() -> written.map(WrittenQuantity::quantity)),
                    written.flatMap(WrittenQuantity::alternative)
                            .or(() -> content.isPresent() ? Optional.empty() : brackets.first()),
                    written.map(WrittenQuantity::packing).orElse(""),
                    phrase.name(),
                    phrase.preparation(),
                    optional,
                    phrase.alternatives());
        }

        private static String joined(List<String> preparation) {
            return String.join(
                    ", ", preparation.stream().filter(each -> !each.isEmpty()).toList());
        }
    }
}
