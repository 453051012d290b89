package org.misecue.recipe;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Packings;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;

/** Reads how much a recipe makes: "Makes 10 slices", "Serves 8–10", "Makes 2 × 900 g loaves". */
final class YieldReader {

    private static final Cued YIELD = Cued.inAnyCase(
            "(?<![\\p{L}])(makes?|serves?|servings?|yields?|cuts?\\h+into|gives?|enough\\h+for|feeds?|portions?)(?:\\h*[:=–-]\\h*|\\h+)"
                    + "(?:(?:makes?|serves?|enough\\h+for|cuts\\h+into)\\h+)?(?=[\\d½]|about|approx|around|roughly|up\\h+to|an?\\b|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|~)");
    private static final Pattern TIMES = Pattern.compile(
            "^(?:([\\d]+|an?|one|two|three|four|five|six)(?:\\h*[x×]\\h*|\\h+))(?=[\\d½]+\\h*-?(?:g|kg|cm|in|inch|lb|oz|ml)\\b)",
            Pattern.CASE_INSENSITIVE);
    /** "Makes a soft dough" tells no yield. */
    private static final Pattern A_CONSISTENCY =
            Pattern.compile("^an?\\h+(?!loaf|cake|tart|pie|tray|batch|dozen|couple)", Pattern.CASE_INSENSITIVE);

    /** The words that tell of a yield in a step too. */
    private static final Pattern OF_STEPS =
            Pattern.compile("makes?|serves?|yields?|cuts?\\h+into", Pattern.CASE_INSENSITIVE);

    private static final Pattern OF_PEOPLE =
            Pattern.compile("serv.*|feeds?|portions?|enough.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern FRONT = Pattern.compile("^[\\h-]+");
    private static final Pattern WHAT = Pattern.compile(
            "^([^.;,(|/]*?)(?=\\h*(?:[.;,(|/]|$|\\b(?:depending|in\\h+a|plus|and|about|approximately)\\b))",
            Pattern.CASE_INSENSITIVE);
    private static final QuantityReader QUANTITIES = new QuantityReader();

    private YieldReader() {}

    static boolean speaksOfYield(Wording text) {
        return YIELD.at(text, 0).isPresent();
    }

    /** The first yield that the text states. */
    static Optional<Setting> read(Wording text, int step, int line) {
        return YIELD.firstIn(text, 0).flatMap(yield -> read(text.text(), yield, step, line));
    }

    private static Optional<Setting> read(String text, Matcher yield, int step, int line) {
        if (step > 0 && !OF_STEPS.matcher(yield.group(1)).matches()) {
            return Optional.empty();
        }
        String rest = text.substring(yield.end());
        boolean people = OF_PEOPLE.matcher(yield.group(1)).matches();
        Matcher times = TIMES.matcher(rest);
        if (times.find()) {
            return sized(rest, times, step, line);
        }
        if (A_CONSISTENCY.matcher(rest).find()) {
            return Optional.empty();
        }
        return QUANTITIES
                .read(rest)
                .filter(written -> written.quantity().dimension() != Dimension.DURATION
                        && written.quantity().dimension() != Dimension.TEMPERATURE)
                .map(written -> setting(
                        written.quantity(),
                        written.alternative().map(List::of).orElse(List.of()),
                        what(written, rest, people),
                        step,
                        line));
    }

    /** "1 × 900 g loaf": one loaf, with its size beside. */
    private static Optional<Setting> sized(String rest, Matcher times, int step, int line) {
        Optional<WrittenQuantity> count = QUANTITIES.read(times.group(1) + " loaf");
        String behind = rest.substring(times.end());
        return count.flatMap(one -> QUANTITIES
                .read(behind)
                .map(size -> setting(one.quantity(), List.of(size.quantity()), what(size, behind, false), step, line)));
    }

    private static String what(WrittenQuantity written, String rest, boolean people) {
        String words = words(rest.substring(written.end()));
        if (!written.packing().isEmpty()) {
            boolean one = Quantity.of(1, Unit.EACH).equals(written.quantity())
                    || written.quantity().unit() != Unit.EACH;
            return ((one ? written.packing() : Packings.plural(written.packing())) + " " + words).strip();
        }
        return words.isEmpty() && people ? "servings" : words;
    }

    private static String words(String text) {
        Matcher what = WHAT.matcher(FRONT.matcher(text).replaceFirst(""));
        return what.find() ? what.group(1).strip().toLowerCase(Locale.ROOT) : "";
    }

    private static Setting setting(Quantity quantity, List<Quantity> also, String what, int step, int line) {
        Quantity whole =
                quantity.unit() == Unit.EACH && quantity.amount().least().isEmpty()
                        ? Quantity.of(Rationals.ONE, Unit.EACH)
                        : quantity;
        return new Setting(Setting.Kind.YIELD, whole, Optional.empty(), also, what, 1, step, line);
    }
}
