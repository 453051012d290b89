package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;

/** Reads durations in a step and what goes on meanwhile: "bake for 45–50 minutes", "prove for an hour and a half". */
final class DurationReader {

    private static final Cued START = Cued.inAnyCase(
            "(?<![\\p{L}\\d.,/–-])(?:(?:about|around|approximately|roughly|at\\h+least|up\\h+to|another|a\\h+further)\\h+)?"
                    + "(?=\\d|[½¼¾⅓⅔]|an?\\h+(?:half|quarter|hour|minute)|half\\h+an|three[\\h-]quarters|(?:one|two|three|four|five|six|seven|eight|ten|twelve|fifteen|twenty)\\b)");
    private static final Pattern FURTHER = Pattern.compile("^(?:another|a\\h+further)\\h+", Pattern.CASE_INSENSITIVE);
    /** Each time holds one of these. */
    private static final Cued MEASURE = Cued.of(
            Pattern.compile("min|hr|hour|(?<!\\p{L})h(?!\\p{L})", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));

    private static final Pattern AND_A_HALF =
            Pattern.compile("^\\h*and\\h+(?:a\\h+)?(half|quarter|three[\\h-]quarters)\\b", Pattern.CASE_INSENSITIVE);
    private static final Cued NOT_A_SETTING = Cued.inAnyCase("\\b(?:(?:every|each|per|for\\h+the\\h+(?:first|last))"
            + "|(?:check|turn|rotat|test|look|peek|baste|shak)(?:e|ing)?\\h+(?:[\\p{L}-]+\\h+){0,3}after)\\h+$");

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private DurationReader() {}

    /** The times of a step, each with the technique nearest to it. */
    static List<Setting> read(Sightings sightings, int step, int line) {
        return stated(sightings, step, line).stream().map(Stated::setting).toList();
    }

    /** The same, each with its place in the step. */
    static List<Stated> stated(Sightings sightings, int step, int line) {
        Wording wording = sightings.wording();
        List<Stated> settings = new ArrayList<>();
        if (!MEASURE.standsIn(wording)) {
            return settings;
        }
        String text = wording.text();
        int from = 0;
        while (from < text.length()) {
            Optional<Matcher> found = START.firstIn(wording, from);
            if (found.isEmpty()) {
                break;
            }
            Matcher start = found.get();
            String rest = hedgeOnly(text.substring(start.start()));
            int skipped = text.length() - start.start() - rest.length();
            Optional<WrittenQuantity> written =
                    QUANTITIES.read(rest).filter(read -> read.quantity().dimension() == Dimension.DURATION);
            if (written.isEmpty()) {
                from = start.end() + 1;
                continue;
            }
            int end = start.start() + skipped + written.get().end();
            Matcher more = AND_A_HALF.matcher(text.substring(end));
            Quantity quantity = more.find()
                    ? longer(written.get().quantity(), more.group(1))
                    : written.get().quantity();
            if (!NOT_A_SETTING.endsAt(wording, start.start())) {
                String what = sightings.around(start.start(), end);
                Setting time =
                        new Setting(Setting.Kind.DURATION, quantity, Optional.empty(), List.of(), what, 1, step, line);
                settings.add(new Stated(start.start(), end, time));
            }
            from = end;
        }
        return settings;
    }

    /** "Another" and "a further" are no hedge and no number. */
    private static String hedgeOnly(String text) {
        return FURTHER.matcher(text).replaceFirst("");
    }

    private static Quantity longer(Quantity hours, String share) {
        long quarters = share.startsWith("h") ? 2 : share.startsWith("q") ? 1 : 3;
        return hours.amount()
                .least()
                .filter(value -> hours.unit() == Unit.HOUR)
                .map(value -> Quantity.of(value.add(Rationals.of(quarters, 4)), Unit.HOUR))
                .orElse(hours);
    }
}
