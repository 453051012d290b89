package org.misecue.quantity;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
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

    private static final Pattern SPACE = Pattern.compile("\\h*");
    private static final Pattern OF = Pattern.compile("\\h*\\bof\\b\\h*|\\h+");
    private static final Pattern TO =
            Pattern.compile("\\h*[-–—‑−]\\h*(?=[\\d.½¼¾⅓⅔⅛])|\\h+(?:to|or)\\h+", Pattern.CASE_INSENSITIVE);
    /** The "four-hundred-gram" of "two four-hundred-gram tins". */
    private static final Pattern WORDED_SIZE = Pattern.compile(
            "\\h*(?:\\p{L}+-){1,4}(?:gram|ounce|pound|litre|millilitre)s?\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern OR_SO =
            Pattern.compile(",?\\h+or\\h+(?:so|thereabouts)\\b,?", Pattern.CASE_INSENSITIVE);
    /** "A tablespoon or two". */
    private static final Pattern OR_TWO = Pattern.compile("\\h+or\\h+two\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern BETWEEN = Pattern.compile("between\\h+", Pattern.CASE_INSENSITIVE);
    private static final Pattern AND = Pattern.compile("\\h+and\\h+", Pattern.CASE_INSENSITIVE);
    private static final Pattern TIMES = Pattern.compile("\\h*[x×✕*]\\h*", Pattern.CASE_INSENSITIVE);
    private static final Pattern OPEN = Pattern.compile("\\h*\\(");
    private static final Pattern CLOSE = Pattern.compile(
            "(?:\\h*(?:[/,;|=]|\\bor\\h+(?=[\\d½¼¾⅓⅔⅛]))\\h*[^()]*)?\\h*(each|apiece|total|in total|in all|packed|sifted|drained)?\\h*\\)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BESIDE = Pattern.compile("\\h*[/|]\\h*");
    private static final Pattern GAS = Pattern.compile("gas(?:\\h+mark)?\\h*(?=[\\d½¼])", Pattern.CASE_INSENSITIVE);
    private static final Pattern A_PINCH =
            Pattern.compile("(?:(?:large|small|big|tiny|good|generous)\\h+)*pinch", Pattern.CASE_INSENSITIVE);
    /** The "a" of "½ a lemon". */
    private static final Pattern A_WHOLE = Pattern.compile("\\h+(?:of\\h+)?an?(?=\\h)", Pattern.CASE_INSENSITIVE);

    private static final Pattern WORD_END = Pattern.compile("(?![\\p{L}])");
    private static final Pattern NOT_BUTTER = Pattern.compile(
            "\\h*(?:of\\h+)?(?:cinnamon|celery|rhubarb|lemongrass|liquorice|rock|vanilla|cassia)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FIGURE = Pattern.compile("\\h*[-–−+]?\\h*[\\d½¼¾⅐-⅞.⁄]");

    private static final Set<String> BEGINNINGS = Stream.concat(
                    Stream.of(LooseAmounts.LOOSE, Hedges.ARTICLE, Hedges.HEDGE, GAS, A_PINCH)
                            .flatMap(pattern -> Beginnings.of(pattern).stream()),
                    NumberWords.FIRST.stream()
                            .filter(word -> word.length() >= Beginnings.LETTERS)
                            .map(word -> word.substring(0, Beginnings.LETTERS)))
            .collect(Collectors.toUnmodifiableSet());

    /** The amount that the text begins with; empty where it begins with none that can be used. */
    public Optional<WrittenQuantity> read(String text) {
        Cursor cursor = new Cursor(text, 0);
        cursor.skip(SPACE);
        if (!mayBegin(cursor.word())) {
            return Optional.empty();
        }
        Optional<Quantity> loose = LooseAmounts.take(cursor);
        if (loose.isPresent()) {
            return Optional.of(written(cursor, loose.get(), Optional.empty(), "", Optional.empty()));
        }
        String hedge = Hedges.take(cursor);
        return counted(cursor, hedge).or(() -> measured(cursor, hedge)).or(() -> pieces(cursor, hedge));
    }

    /** A quick no for the many texts whose first word begins no amount; figures and single letters may begin one. */
    private static boolean mayBegin(String word) {
        return word.length() < Beginnings.LETTERS || BEGINNINGS.contains(word.substring(0, Beginnings.LETTERS));
    }

    /** Whether the text begins with figures at all; where {@link #read} finds nothing then, they were refused. */
    public boolean beginsWithFigures(String text) {
        return FIGURE.matcher(text).lookingAt() && text.chars().anyMatch(Character::isLetterOrDigit);
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
        cursor.skip(SPACE);
        String inner = Hedges.take(cursor);
        Optional<Quantity> each = times || bracket || cursor.sees(FIGURE) || cursor.sees(WORDED_SIZE)
                ? measure(cursor)
                : Optional.empty();
        if (each.isPresent()) {
            Optional<Quantity> other = beside(cursor, Rationals.ONE).map(quantity -> quantity.times(count));
            if (bracket && !cursor.skip(CLOSE)) {
                return Optional.empty();
            }
            cursor.skip(Hedges.HANDLING);
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
        cursor.skip(Hedges.HANDLING);
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
        cursor.skip(Hedges.HANDLING);
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
        cursor.skip(Hedges.HANDLING);
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
            cursor.skip(SPACE);
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
        Pattern to = cursor.skip(BETWEEN) ? AND : TO;
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
        cursor.skip(OF);
        return new WrittenQuantity(about, alternative, packing, count, cursor.at());
    }
}
