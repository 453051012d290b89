package org.misecue.quantity;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tech.units.indriya.function.RationalNumber;

/**
 * Reads an amount written at the start of a text: {@code 225 g}, {@code 1½ tsp}, {@code 2–3 tbsp}, {@code 1 x 400 g
 * tin}, {@code 75g/2½oz}, {@code half a} lemon, {@code a pinch of}. Numbers above {@value Numbers#MOST} and those that are
 * zero, negative or garbled are not read.
 */
public final class QuantityReader {

    /** Measures that nothing is packed in: the cloves of "1 tsp cloves" are the spice. */
    private static final Set<Unit> SPOONS = EnumSet.of(Unit.TEASPOON, Unit.TABLESPOON, Unit.CUP, Unit.PINCH);

    private static final Shape TO = Shape.inAnyCase("\\h*[-–—‑−]\\h*(?=[\\d.½¼¾⅓⅔⅛])|\\h+(?:to|or)\\h+");
    /** The "four-hundred-gram" of "two four-hundred-gram tins". */
    private static final Shape WORDED_SIZE =
            Shape.inAnyCase("\\h*(?:\\p{L}+-){1,4}(?:gram|ounce|pound|litre|millilitre)s?\\b");

    private static final Shape OR_SO = Shape.inAnyCase(",?\\h+or\\h+(?:so|thereabouts)\\b,?");
    /** "A tablespoon or two". */
    private static final Shape OR_TWO = Shape.inAnyCase("\\h+or\\h+two\\b");

    private static final Shape BETWEEN = Shape.inAnyCase("between\\h+");
    private static final Shape AND = Shape.inAnyCase("\\h+and\\h+");
    private static final Shape TIMES = Shape.inAnyCase("\\h*[x×✕*]\\h*");
    private static final Shape OPEN = Shape.of("\\h*\\(");
    private static final Shape CLOSE = Shape.inAnyCase(
            "(?:\\h*(?:[/,;|=]|\\bor\\h+(?=[\\d½¼¾⅓⅔⅛]))\\h*[^()]*)?\\h*(each|apiece|total|in total|in all|packed|sifted|drained)?\\h*\\)");
    private static final Shape BESIDE = Shape.of("\\h*[/|]\\h*");
    private static final Shape GAS = Shape.inAnyCase("gas(?:\\h+mark)?\\h*(?=[\\d½¼])");
    private static final Shape A_PINCH = Shape.inAnyCase("(?:(?:large|small|big|tiny|good|generous)\\h+){0,5}pinch");
    /** The "a" of "½ a lemon". */
    private static final Shape A_WHOLE = Shape.inAnyCase("\\h+(?:of\\h+)?an?(?=\\h)");

    private static final Shape WORD_END = Shape.of("(?![\\p{L}])");
    private static final Shape NOT_BUTTER =
            Shape.inAnyCase("\\h*(?:of\\h+)?(?:cinnamon|celery|rhubarb|lemongrass|liquorice|rock|vanilla|cassia)");
    private static final Shape FIGURE = Shape.of("\\h*+[-–−+]?\\h*+[\\d½¼¾⅐-⅞.⁄]");

    private static final Set<String> BEGINNINGS = Stream.concat(
                    Stream.of(LooseAmounts.UNSIZED, Hedges.ARTICLE, Hedges.HEDGE, GAS, A_PINCH, BETWEEN)
                            .map(Shape::pattern)
                            .flatMap(pattern -> Beginnings.of(pattern).stream()),
                    NumberWords.FIRST.stream().map(word -> Beginnings.at(word, 0)))
            .collect(Collectors.toUnmodifiableSet());

    /** The amount that the text begins with; empty where it begins with none that can be used. */
    public Optional<WrittenQuantity> read(String text) {
        Cursor cursor = new Cursor(text, 0);
        cursor.skipBlanks();
        if (!mayBegin(text, cursor.at())) {
            return Optional.empty();
        }
        Optional<Quantity> loose = LooseAmounts.take(cursor);
        if (loose.isPresent()) {
            return Optional.of(written(cursor, loose.get(), Optional.empty(), "", Optional.empty()));
        }
        String hedge = Hedges.take(cursor);
        return counted(cursor, hedge).or(() -> measured(cursor, hedge)).or(() -> pieces(cursor, hedge));
    }

    /** A quick no for the many words that begin no amount; figures and single letters may begin one. */
    public static boolean mayBegin(String text, int at) {
        String letters = Beginnings.at(text, at);
        if (letters.equals("the")) {
            return LooseAmounts.mayFollow(text, at + letters.length());
        }
        return letters.length() < 2 || BEGINNINGS.contains(letters) || isSize(text, at);
    }

    /** The "four-hundred" of "four-hundred-gram tins". */
    private static boolean isHyphened(String text, int at) {
        int end = Blanks.end(text, at);
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        return Cursor.sign(text, end) == '-';
    }

    /** The "egg-sized" of "egg-sized knob". */
    static boolean isSize(String text, int at) {
        int end = at;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        return text.regionMatches(true, end, "-size", 0, "-size".length());
    }

    /** Whether the text begins with figures at all; where {@link #read} finds nothing then, they were refused. */
    public boolean beginsWithFigures(String text) {
        return FIGURE.pattern().matcher(text).lookingAt() && text.chars().anyMatch(Character::isLetterOrDigit);
    }

    /** "2 x 400 g tins", "1 (14 oz) can", "1 400g tin", "1 sachet (7 g)". */
    private Optional<WrittenQuantity> counted(Cursor cursor, String hedge) {
        int start = cursor.at();
        Optional<RationalNumber> count = Numbers.take(cursor);
        if (count.isPresent()) {
            Optional<WrittenQuantity> found = eachHolding(cursor, count.get(), hedge);
            if (found.isPresent()) {
                return found;
            }
        }
        cursor.backTo(start);
        return Optional.empty();
    }

    private Optional<WrittenQuantity> eachHolding(Cursor cursor, RationalNumber count, String hedge) {
        boolean times = cursor.skip(TIMES);
        int afterCount = cursor.at();
        boolean bracket = !times && cursor.skip(OPEN);
        cursor.skip(A_WHOLE);
        cursor.skipBlanks();
        String inner = Hedges.take(cursor);
        Optional<Quantity> each = times
                        || bracket
                        || cursor.sees(FIGURE)
                        || (cursor.maySee(QuantityReader::isHyphened) && cursor.sees(WORDED_SIZE))
                ? measure(cursor)
                : Optional.empty();
        if (each.isPresent()) {
            Optional<Quantity> other = beside(cursor, Rationals.ONE).map(quantity -> quantity.times(count));
            if (bracket && !cursor.skip(CLOSE)) {
                return Optional.empty();
            }
            Hedges.skipHandling(cursor);
            Optional<String> packing = Packings.take(cursor);
            if (packing.isEmpty() && each.get().dimension() == Dimension.LENGTH) {
                cursor.backTo(afterCount);
                return times ? just(cursor, count, hedge) : Optional.empty();
            }
            if (packing.isPresent() || times) {
                Quantity all = Hedges.on(each.get().times(count), inner.isEmpty() ? hedge : inner);
                Optional<Quantity> alternative = other.or(() -> beside(cursor, count));
                return Optional.of(written(cursor, all, alternative, packing.orElse(""), Optional.of(count)));
            }
            return Optional.empty();
        }
        Hedges.skipHandling(cursor);
        Optional<String> packing = Packings.take(cursor);
        if (packing.isEmpty()) {
            return times ? just(cursor, count, hedge) : Optional.empty();
        }
        Optional<Quantity> content = beside(cursor, count);
        Quantity all = Hedges.on(content.orElse(Quantity.of(count, Unit.EACH)), hedge);
        return Optional.of(written(cursor, all, Optional.empty(), packing.get(), Optional.of(count)));
    }

    private Optional<WrittenQuantity> just(Cursor cursor, RationalNumber count, String hedge) {
        Quantity all = Hedges.on(Quantity.of(count, Unit.EACH), hedge);
        return Optional.of(written(cursor, all, Optional.empty(), "", Optional.empty()));
    }

    /** "225 g", "1½ cups (190 g)", "75g/2½oz", "7g sachet", "a 2.5 cm piece of". */
    private Optional<WrittenQuantity> measured(Cursor cursor, String hedge) {
        int start = cursor.at();
        Optional<Quantity> first = measure(cursor).or(() -> hedge.isEmpty() ? Optional.empty() : one(cursor));
        if (first.isEmpty()) {
            cursor.backTo(start);
            return Optional.empty();
        }
        Quantity quantity = Hedges.on(Sums.with(cursor, first.get(), this::measure), hedge);
        Optional<Quantity> alternative = beside(cursor, Rationals.ONE);
        Quantity whole = Sums.with(cursor, quantity, this::measure);
        if (alternative.isPresent() && !whole.equals(quantity)) {
            beside(cursor, Rationals.ONE);
            return Optional.of(written(cursor, whole, Optional.empty(), "", Optional.empty()));
        }
        if (quantity.unit() == Unit.STICK && cursor.sees(NOT_BUTTER)) {
            return Optional.of(written(
                    cursor,
                    new Quantity(quantity.amount(), Unit.EACH),
                    alternative,
                    "stick",
                    quantity.amount().least()));
        }
        int before = cursor.at();
        Hedges.skipHandling(cursor);
        Optional<String> packing = SPOONS.contains(quantity.unit()) ? Optional.empty() : Packings.take(cursor);
        if (packing.isEmpty()) {
            cursor.backTo(before);
        }
        Optional<Quantity> late = alternative.or(() -> beside(cursor, Rationals.ONE));
        return Optional.of(written(cursor, quantity, late, packing.orElse(""), packing.map(word -> Rationals.ONE)));
    }

    /** The "cup" of "a scant cup". */
    private static Optional<Quantity> one(Cursor cursor) {
        return UnitWords.take(cursor).map(found -> Quantity.of(found.times(), found.unit()));
    }

    /** "3" eggs, "2 to 3" lemons, "2 cloves". */
    private Optional<WrittenQuantity> pieces(Cursor cursor, String hedge) {
        Optional<Amount> amount = amount(cursor);
        if (amount.isEmpty() || !cursor.sees(WORD_END)) {
            return Optional.empty();
        }
        cursor.skip(A_WHOLE);
        int before = cursor.at();
        Hedges.skipHandling(cursor);
        Optional<String> packing = Packings.take(cursor);
        if (packing.isEmpty()) {
            cursor.backTo(before);
        }
        Quantity quantity = Hedges.on(new Quantity(amount.get(), Unit.EACH), hedge);
        int behind = cursor.at();
        Optional<Quantity> alternative =
                beside(cursor, Rationals.ONE).filter(other -> other.dimension() != Dimension.LENGTH);
        if (alternative.isEmpty()) {
            cursor.backTo(behind);
        }
        return Optional.of(written(cursor, quantity, alternative, packing.orElse(""), Optional.empty()));
    }

    /** A number or range with its unit. */
    private Optional<Quantity> measure(Cursor cursor) {
        int start = cursor.at();
        if (cursor.skip(GAS)) {
            return amount(cursor).map(amount -> new Quantity(amount, Unit.GAS_MARK));
        }
        Optional<Amount> amount = amount(cursor);
        if (amount.isEmpty() && cursor.sees(A_PINCH)) {
            amount = Optional.of(Amount.of(1));
        }
        if (amount.isPresent()) {
            String handling = Hedges.takeHandling(cursor);
            cursor.skip(A_WHOLE);
            Optional<UnitWords.Found> unit = UnitWords.take(cursor);
            if (unit.isPresent()) {
                Amount upTo = unit.get().unit() == Unit.PINCH
                        ? amount.get()
                        : upperEnd(cursor, Numbers.andAHalf(cursor, amount.get()), unit.get());
                return Optional.of(Hedges.on(
                        new Quantity(upTo.times(unit.get().times()), unit.get().unit()),
                        unit.get().unit() == Unit.PINCH ? "" : handling));
            }
        }
        cursor.backTo(start);
        return Optional.empty();
    }

    /** The "120 g" of "100 g to 120 g". */
    private Amount upperEnd(Cursor cursor, Amount lower, UnitWords.Found unit) {
        int start = cursor.at();
        if (lower instanceof Amount.Exact from && cursor.skip(TO)) {
            Optional<RationalNumber> to = Numbers.take(cursor);
            cursor.skipBlanks();
            Optional<RationalNumber> upper = to.flatMap(value -> UnitWords.take(cursor)
                    .filter(other -> other.unit().dimension() == unit.unit().dimension())
                    .filter(other -> other.unit().system() == unit.unit().system())
                    .flatMap(other -> inUnit(value, other, unit)));
            if (upper.isPresent()) {
                return Amount.between(from.value(), upper.get());
            }
        }
        cursor.backTo(start);
        return lower;
    }

    private static Optional<RationalNumber> inUnit(RationalNumber value, UnitWords.Found from, UnitWords.Found to) {
        return Quantity.of(value.multiply(from.times()), from.unit())
                .in(to.unit(), Household.METRIC)
                .amount()
                .least()
                .map(converted -> converted.divide(to.times()));
    }

    private Optional<Amount> amount(Cursor cursor) {
        int start = cursor.at();
        Shape to = cursor.skip(BETWEEN) ? AND : TO;
        Optional<RationalNumber> from = Numbers.take(cursor);
        if (from.isEmpty()) {
            cursor.backTo(start);
            return Optional.empty();
        }
        int afterFirst = cursor.at();
        if (cursor.skip(to)) {
            Optional<RationalNumber> upper = Numbers.take(cursor);
            if (upper.isPresent()) {
                return Optional.of(Amount.between(from.get(), upper.get()));
            }
        }
        cursor.backTo(afterFirst);
        return Optional.of(Amount.of(from.get()));
    }

    /** The other measure in brackets or behind a stroke; "each" multiplies it. */
    private Optional<Quantity> beside(Cursor cursor, RationalNumber count) {
        int start = cursor.at();
        boolean bracket = cursor.skip(OPEN);
        if (bracket || cursor.skip(BESIDE)) {
            String hedge = Hedges.take(cursor);
            Optional<Quantity> other = measure(cursor)
                    .filter(quantity -> quantity.dimension() != Dimension.COUNT)
                    .map(quantity -> Hedges.on(quantity, hedge));
            if (other.isPresent() && !bracket) {
                while (cursor.skip(BESIDE) && measure(cursor).isPresent()) {
                    start = cursor.at();
                }
                return other;
            }
            Optional<MatchResult> close = other.flatMap(quantity -> cursor.take(CLOSE));
            if (close.isPresent()) {
                boolean each =
                        close.get().group(1) != null && close.get().group(1).matches("(?i)each|apiece");
                return each ? other.map(quantity -> quantity.times(count)) : other;
            }
        }
        cursor.backTo(start);
        return Optional.empty();
    }

    private static WrittenQuantity written(
            Cursor cursor,
            Quantity quantity,
            Optional<Quantity> alternative,
            String packing,
            Optional<RationalNumber> count) {
        boolean oneOrTwo = cursor.sees(OR_TWO) && quantity.amount().equals(Amount.of(1));
        Quantity whole = oneOrTwo && cursor.skip(OR_TWO)
                ? new Quantity(new Amount.Range(Rationals.ONE, Rationals.of(2)), quantity.unit())
                : quantity;
        Quantity about = cursor.skip(OR_SO) ? Hedges.on(whole, "about") : whole;
        cursor.skipOf();
        return new WrittenQuantity(about, alternative, packing, count, cursor.at());
    }
}
