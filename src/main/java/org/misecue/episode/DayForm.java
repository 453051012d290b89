package org.misecue.episode;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The settings of the filming day, each with its bounds and an example. */
final class DayForm {

    static final List<String> KEYS = List.of(
            "presenters",
            "cameras",
            "end",
            "line-up",
            "set-up",
            "shelves",
            "rings",
            "stand-mixer",
            "breaks",
            "daylight",
            "appointments",
            "after");

    private static final List<String> BREAK = List.of("from", "to", "for");
    private static final List<String> DAYLIGHT = List.of("from", "to", "set-ups");
    private static final List<String> APPOINTMENT = List.of("at", "for", "who", "shot", "what");
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("H:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern SPAN =
            Pattern.compile("(?:(\\d{1,2})\\s*h(?:ours?)?)?\\s*(?:(\\d{1,3})\\s*(?:min(?:utes?)?)?)?");
    private static final Pattern AFTER = Pattern.compile("(\\d{1,3})\\s*:\\s*(\\d{1,3}(?:\\s*,\\s*\\d{1,3})*+)?");
    private static final int MOST_MINUTES = 600;

    private DayForm() {}

    static FilmingDay day(StrictMap map) {
        FilmingDay usual = FilmingDay.DEFAULT;
        return new FilmingDay(
                map.whole("presenters", 1, 4, usual.presenters()),
                map.whole("cameras", 1, 4, usual.cameras()),
                map.has("end") ? Optional.of(time(map, "end")) : Optional.empty(),
                map.has("line-up") ? span(map, "line-up", 0, 60) : usual.lineUp(),
                map.has("set-up") ? span(map, "set-up", 0, 120) : usual.setUp(),
                map.whole("shelves", 1, 9, usual.shelves()),
                map.whole("rings", 1, 12, usual.rings()),
                map.choice("stand-mixer", "yes", "no", usual.standMixer()),
                map.sections("breaks", BREAK).stream().map(DayForm::pause).toList(),
                map.section("daylight", DAYLIGHT).map(DayForm::daylight),
                map.sections("appointments", APPOINTMENT).stream()
                        .map(DayForm::appointment)
                        .toList(),
                after(map));
    }

    private static FilmingDay.Break pause(StrictMap map) {
        FilmingDay.Break pause =
                new FilmingDay.Break(time(map, "from"), time(map, "to"), span(map, "for", 1, MOST_MINUTES));
        ordered(map, pause.from(), pause.to());
        return pause;
    }

    private static FilmingDay.Daylight daylight(StrictMap map) {
        FilmingDay.Daylight light =
                new FilmingDay.Daylight(time(map, "from"), time(map, "to"), map.texts("set-ups", "[hero table]"));
        ordered(map, light.from(), light.to());
        if (light.setUps().isEmpty()) {
            throw map.wrong("set-ups", "the names of camera set-ups", "set-ups: [hero table]");
        }
        return light;
    }

    private static FilmingDay.Appointment appointment(StrictMap map) {
        LocalTime at = time(map, "at");
        String what = map.text("what", "what: delivery").orElse("");
        if (map.has("shot")) {
            return new FilmingDay.Appointment(at, 0, "", map.whole("shot", 1, 9999, 1), what);
        }
        String who = map.text("who", "who: presenter").orElse("");
        if (!who.equals("presenter") && !who.equals("camera")) {
            throw map.wrong("who", "presenter or camera, or leave it out and name a shot", "who: presenter");
        }
        return new FilmingDay.Appointment(at, span(map, "for", 1, MOST_MINUTES), who, 0, what);
    }

    /** "7: 1, 6" says that step 7 comes after steps 1 and 6. */
    private static Map<Integer, Set<Integer>> after(StrictMap map) {
        Map<Integer, Set<Integer>> after = new TreeMap<>();
        for (String row : map.texts("after", "[\"7: 1, 6\"]")) {
            Matcher matcher = AFTER.matcher(row);
            if (!matcher.matches()) {
                throw map.wrongItem("after", row, "a step and those before it", "after: [\"7: 1, 6\"]");
            }
            int step = Integer.parseInt(matcher.group(1));
            String before = Optional.ofNullable(matcher.group(2)).orElse("");
            Set<Integer> steps = Arrays.stream(before.split("\\s*,\\s*"))
                    .filter(text -> !text.isEmpty())
                    .map(Integer::parseInt)
                    .collect(Collectors.toCollection(TreeSet::new));
            if (steps.stream().anyMatch(other -> other >= step)) {
                throw map.wrongItem("after", row, "a step and only steps before it", "after: [\"7: 1, 6\"]");
            }
            after.put(step, steps);
        }
        return after;
    }

    private static void ordered(StrictMap map, LocalTime from, LocalTime to) {
        if (!from.isBefore(to)) {
            throw map.wrong("to", "later than “from”", "from: 12:00 and to: 14:00");
        }
    }

    private static LocalTime time(StrictMap map, String key) {
        try {
            return LocalTime.parse(map.text(key, key + ": 12:00").orElse(""), TIME);
        } catch (DateTimeParseException e) {
            throw map.wrong(key, "a time of the day", key + ": 12:00");
        }
    }

    private static int span(StrictMap map, String key, int least, int most) {
        Matcher matcher = SPAN.matcher(map.text(key, key + ": 30 min").orElse(""));
        if (matcher.matches() && (matcher.group(1) != null || matcher.group(2) != null)) {
            int hours = matcher.group(1) == null ? 0 : Integer.parseInt(matcher.group(1));
            int minutes = hours * 60 + (matcher.group(2) == null ? 0 : Integer.parseInt(matcher.group(2)));
            if (minutes >= least && minutes <= most) {
                return minutes;
            }
        }
        throw map.wrong(key, "minutes from " + least + " to " + most, key + ": 30 min");
    }
}
