package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.narration.Clock;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * What the passages must be besides: {@code step:3}, {@code speaker:Mo}, {@code from:12:30}, {@code to:1:02:00},
 * {@code ingredient:butter}, {@code allergen:sesame}; names of several words in quotation marks.
 *
 * @param from moments that are no earlier, on the source's clock
 * @param to moments that are earlier
 */
record Narrowing(
        OptionalInt step, List<Topic> topics, List<String> speakers, Optional<Duration> from, Optional<Duration> to) {

    private static final Pattern PIECE = Pattern.compile(
            "(?i)(?<![\\p{L}\\d])(?:(step):\\s*(\\d{1,6})\\b"
                    + "|(from|to):(\\d[^\\s\"\u201C\u201D]*)"
                    + "|(speaker|ingredient|allergen):(?:[\"\u201C\u201D]([^\"\u201C\u201D]+)[\"\u201C\u201D]?|([^\\s\"\u201C\u201D]+)))");

    static final Narrowing NONE =
            new Narrowing(OptionalInt.empty(), List.of(), List.of(), Optional.empty(), Optional.empty());

    /** A query in two: what narrows it down, and the words that are left. */
    record Split(Narrowing narrowing, String words) {}

    /** @throws BadInput where a time cannot be read */
    static Split of(String query) {
        OptionalInt step = OptionalInt.empty();
        List<Topic> topics = new ArrayList<>();
        List<String> speakers = new ArrayList<>();
        Optional<Duration> from = Optional.empty();
        Optional<Duration> to = Optional.empty();
        Matcher piece = PIECE.matcher(query);
        while (piece.find()) {
            if (piece.group(1) != null) {
                step = OptionalInt.of(Integer.parseInt(piece.group(2)));
            } else if (piece.group(3) != null) {
                Optional<Duration> time = Optional.of(time(piece.group(3), piece.group(4)));
                boolean begins = piece.group(3).equalsIgnoreCase("from");
                from = begins ? time : from;
                to = begins ? to : time;
            } else {
                String name = Optional.ofNullable(piece.group(6)).orElse(piece.group(7));
                String what = piece.group(5).toUpperCase(Locale.ROOT);
                if (what.equals("SPEAKER")) {
                    speakers.add(name);
                } else {
                    topics.add(new Topic(Topic.Kind.valueOf(what), name));
                }
            }
        }
        Narrowing narrowing = new Narrowing(step, List.copyOf(topics), List.copyOf(speakers), from, to);
        return new Split(narrowing, narrowing.isNone() ? query : piece.replaceAll(" "));
    }

    private static Duration time(String key, String text) {
        return Clock.parse(text)
                .orElseThrow(() -> new BadInput(
                        Place.of("find"),
                        "expected a time such as " + key + ":12:30 or " + key + ":1:02:30, but “" + text
                                + "” is none"));
    }

    /** Whether a moment lies within the time that is asked for, if any is. */
    boolean holds(Supplier<Duration> moment) {
        if (from.isEmpty() && to.isEmpty()) {
            return true;
        }
        Duration at = moment.get();
        return from.stream().allMatch(time -> at.compareTo(time) >= 0)
                && to.stream().allMatch(time -> at.compareTo(time) < 0);
    }

    boolean isNone() {
        return equals(NONE);
    }

    boolean isAboutAllergens() {
        return topics.stream().anyMatch(topic -> topic.kind() == Topic.Kind.ALLERGEN);
    }
}
