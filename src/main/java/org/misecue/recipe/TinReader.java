package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.WrittenQuantity;
import tech.units.indriya.function.RationalNumber;

/**
 * Reads tins with their sizes: "two 20 cm round cake tins", "a 20 cm round tin, 5 cm deep", "9 x 13 inch tin", "2 lb loaf
 * tin", "12-hole muffin tin"; and a line of the head that names one, "Tin: 20 cm round".
 */
final class TinReader {

    /** No longer than a tin has digits: a run of thousands would be tried from each of them on. */
    private static final String NUMBER = "(?:(?<!\\d)\\d{1,9}+(?:[.,]\\d{1,9}+)?\\h?[½¼¾]?|[½¼¾])";

    private static final String UNIT =
            "(?:cm|centimetres?|centimeters?|mm|inch(?:es)?|in\\b\\.?|\"|”|″|g|kg|lb|ml|litre|-?hole|-?cup|-?hole)";
    private static final String SIZE =
            NUMBER + "(?:\\h*-?" + UNIT + ")?(?:\\h*[x×]\\h*" + NUMBER + "(?:\\h*-?" + UNIT + ")?){0,2}";
    /** A word, with few hyphens: what may belong to the word or part it is tried both ways. */
    private static final String WORD = "\\p{L}++(?:-\\p{L}++){0,3}";

    private static final Cued TIN = Cued.inAnyCase(
            "(?:(?<count>\\d{1,2}|an?|one|two|three|four|five|six)(?:\\h+(?:deep\\h+|shallow\\h+)?|\\h*(?<times>[x×])\\h*))?"
                    + "(?<size>" + NUMBER + "(?:\\h*-?" + UNIT + ")?(?:\\h*[x×]\\h*" + NUMBER + "(?:\\h*-?" + UNIT
                    + ")?){0,2})(?<=[\\p{L}\"”″.])"
                    + "(?:\\h*(?:[/(]|or)\\h*(?<other>" + SIZE + ")\\h*\\)?)?"
                    + "[\\h,-]+(?<what>(?:" + WORD
                    + "[\\h,-]++){0,4}?(?:tins?|pans?|trays?|dish(?:es)?|moulds?|molds?|rings?|ramekins?|sheets?|skillets?|cases?|basins?|bundts?|springforms?(?!\\h+(?:cake|baking|tin|pan)))\\b)");
    private static final Pattern MEASURE =
            Pattern.compile("(" + NUMBER + ")(?:\\h*-?(" + UNIT + "))?", Pattern.CASE_INSENSITIVE);
    private static final Cued DEEP = Cued.inAnyCase(
            "[,(]?\\h*(?:(?:and|about|at\\h+least)\\h+){0,3}" + NUMBER
                    + "\\h*-?(?:cm|centimetres?|centimeters?|mm|inch(?:es)?|in\\b\\.?|\"|”|″)\\h*-?(?:deep|high|tall|in\\h+depth)\\b\\)?,?");
    private static final Cued LABEL = Cued.inAnyCase(
            "^\\W*(?:(?:cake|loaf|baking|you\\h+need)\\h+)?(?:tin|pan|mou?ld|dish|equipment)(?:\\h+size)?\\h*:\\h*(?<named>.+?)\\.?\\s*$");
    private static final Pattern BREAK = Pattern.compile("(?i)\\b(?:of|the|in|into|with|and|on|over)\\b");
    private static final Cued SIZED = Cued.inAnyCase(NUMBER + "\\h*-?" + UNIT);
    /** How many signs may stand between a tin and its depth: ", and ". */
    private static final int NEAR = 6;

    /** In centimetres. No tin is so deep, hardly one so narrow. Common practice, no source. */
    private static final RationalNumber DEEPEST = Rationals.of(12);

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private TinReader() {}

    /** Every tin with a size, in the order of the text; the second side of a rectangle comes first in {@code also}. */
    static List<Setting> read(Wording text, int step, int line) {
        List<Setting> tins = named(text, step, line);
        return tins.isEmpty()
                ? LABEL.whole(text)
                        .map(label -> named(Wording.of(label.group("named") + " tin"), step, line))
                        .orElse(tins)
                : tins;
    }

    private static List<Setting> named(Wording text, int step, int line) {
        if (!TIN.mayStandIn(text) || !SIZED.standsIn(text)) {
            return new ArrayList<>();
        }
        Wording flat = withoutDepths(text);
        List<Setting> tins = named(flat, text, step, line);
        return tins.isEmpty() && flat != text
                ? named(text, text, step, line).stream()
                        .filter(TinReader::isWide)
                        .toList()
                : tins;
    }

    /** "a 20 cm deep round tin" is 20 cm wide, and deep; "a 5 cm deep dish" is not 5 cm wide. */
    private static boolean isWide(Setting tin) {
        return tin.quantity()
                .leastInBase(Household.METRIC)
                .filter(size -> size.compareTo(DEEPEST) > 0)
                .isPresent();
    }

    private static List<Setting> named(Wording flat, Wording text, int step, int line) {
        List<Setting> tins = new ArrayList<>();
        TIN.each(flat, tin -> {
            String what = tin.group("what")
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[\\h,]+", " ")
                    .replaceFirst("^deep ", "");
            boolean rectangle =
                    tin.group("times") != null && Nouns.singular(what).equals(what);
            List<Quantity> sides = sides((rectangle ? tin.group("count") + " x " : "") + tin.group("size"));
            if (sides.isEmpty() || BREAK.matcher(what).find()) {
                return;
            }
            List<Quantity> also = new ArrayList<>(sides.subList(1, sides.size()));
            if (tin.group("other") != null) {
                also.addAll(sides(tin.group("other")));
            }
            tins.add(new Setting(
                    Setting.Kind.PAN,
                    sides.get(0),
                    Optional.empty(),
                    List.copyOf(also),
                    Nouns.singular(what),
                    rectangle ? 1 : count(tin.group("count")),
                    step,
                    line,
                    flat == text ? Optional.empty() : depth(text, tin.start(), tin.end())));
        });
        return tins;
    }

    /** With the words of depths blanked out, so that places stay. */
    private static Wording withoutDepths(Wording text) {
        if (!DEEP.mayStandIn(text)) {
            return text;
        }
        StringBuilder flat = new StringBuilder(text.text());
        DEEP.each(text, deep -> {
            for (int at = deep.start(); at < deep.end(); at++) {
                flat.setCharAt(at, ' ');
            }
        });
        return Wording.of(flat.toString());
    }

    /** The depth that stands in the tin's words or close beside them. */
    private static Optional<Quantity> depth(Wording text, int start, int end) {
        return DEEP.in(text).stream()
                .filter(deep -> deep.end() >= start - NEAR && deep.start() <= end + NEAR)
                .filter(deep -> Sentences.start(text.text(), deep.start()) == Sentences.start(text.text(), start))
                .findFirst()
                .map(deep -> SIZED.pattern().matcher(deep.group()))
                .filter(Matcher::find)
                .flatMap(words -> sides(words.group()).stream().findFirst());
    }

    /** The sides, all in the unit that is written behind the last of them. */
    private static List<Quantity> sides(String size) {
        Matcher measure = MEASURE.matcher(size);
        List<String> numbers = new ArrayList<>();
        String unit = "";
        while (measure.find()) {
            numbers.add(measure.group(1));
            unit = measure.group(2) == null ? unit : measure.group(2);
        }
        List<Quantity> sides = new ArrayList<>();
        for (String number : numbers) {
            quantity(number, unit).ifPresent(sides::add);
        }
        return sides;
    }

    private static Optional<Quantity> quantity(String number, String unit) {
        String plain = unit.toLowerCase(Locale.ROOT).replace("-", "");
        if (plain.equals("hole")) {
            return QUANTITIES.read(number).map(WrittenQuantity::quantity);
        }
        String spelled = plain.startsWith("in") ? "inch" : plain;
        return plain.isEmpty()
                ? Optional.empty()
                : QUANTITIES.read(number + " " + spelled).map(WrittenQuantity::quantity);
    }

    private static int count(@org.jspecify.annotations.Nullable String word) {
        if (word == null) {
            return 1;
        }
        return QUANTITIES
                .read(word + " tins")
                .flatMap(written ->
                        written.count().or(() -> written.quantity().amount().least()))
                .filter(Rationals::isWhole)
                .map(RationalNumber::intValue)
                .orElse(1);
    }
}
