package org.misecue.episode;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.misecue.notice.BadInput;

/**
 * The timers of an episode, kept in {@code .misecue/timers.yaml}, so that every device shows the same ones and none is lost
 * when the program is. A timer is a beginning and an end; nothing has to run for it.
 */
public final class Timers {

    private static final String FILE = "timers.yaml";
    private static final String HEAD = "# Timers that run. Kept by misecue desk.\n";
    private static final List<String> KEYS = List.of("about", "what", "started", "ends", "back", "stopped");
    private static final String TIME = "2026-05-04T08:50:00+01:00";
    private static final String EXAMPLE =
            "- {about: \"job: butter\", what: Take the butter out, started: 2026-05-04T08:50:00+01:00, ends: 2026-05-04T10:50:00+01:00}";

    private final StateFile file;

    public Timers(Episode episode) {
        this.file = new StateFile(episode, FILE);
    }

    /**
     * In the order in which they were started.
     *
     * @throws BadInput with its line where the file is not such a list
     */
    public List<Timer> read() {
        return List.copyOf(byAbout().values());
    }

    /** Starts one. Of two people who start the same the first did: one that runs goes on as it is. */
    public void start(Timer timer) {
        change(timers -> {
            Timer before = timers.get(timer.about());
            if (before == null || !before.runs()) {
                timers.remove(timer.about());
                timers.put(timer.about(), timer);
            }
        });
    }

    /** Stops one, before its end or when it has rung; one that was stopped earlier is forgotten. */
    public void stop(String about, OffsetDateTime now) {
        change(timers -> {
            timers.values().removeIf(timer -> !timer.runs() && !timer.about().equals(about));
            timers.computeIfPresent(about, (key, timer) -> timer.with(Optional.of(now)));
        });
    }

    /** Takes the stopping back: it ends when it was to end. */
    public void goOn(String about) {
        change(timers -> timers.computeIfPresent(about, (key, timer) -> timer.with(Optional.empty())));
    }

    private void change(Consumer<Map<String, Timer>> change) {
        file.change(
                this::byAbout,
                timers -> {
                    change.accept(timers);
                    return timers;
                },
                timers -> text(timers.values()));
    }

    private Map<String, Timer> byAbout() {
        Map<String, Timer> timers = new LinkedHashMap<>();
        for (StrictMap map : file.entries("timers such as", EXAMPLE, KEYS)) {
            Timer one = timer(map);
            timers.put(one.about(), one);
        }
        return timers;
    }

    private static Timer timer(StrictMap map) {
        return new Timer(
                text(map, "about"),
                text(map, "what"),
                time(map, "started"),
                time(map, "ends"),
                map.has("back") ? Optional.of(time(map, "back")) : Optional.empty(),
                map.has("stopped") ? Optional.of(time(map, "stopped")) : Optional.empty());
    }

    private static String text(StrictMap map, String key) {
        String example = key + ": Take the butter out";
        return map.text(key, example)
                .filter(text -> !text.isEmpty())
                .orElseThrow(() -> map.wrong(key, "a few words", example));
    }

    private static OffsetDateTime time(StrictMap map, String key) {
        try {
            return OffsetDateTime.parse(map.text(key, key + ": " + TIME).orElse(""));
        } catch (DateTimeParseException e) {
            throw map.wrong(key, "a day and a time with its zone", key + ": " + TIME);
        }
    }

    private static String text(Iterable<Timer> timers) {
        List<String> lines = new ArrayList<>();
        for (Timer one : timers) {
            lines.add("- about: " + YamlText.quoted(one.about()));
            lines.add("  what: " + YamlText.quoted(one.what()));
            lines.add("  started: " + written(one.started()));
            lines.add("  ends: " + written(one.ends()));
            one.back().ifPresent(back -> lines.add("  back: " + written(back)));
            one.stopped().ifPresent(stopped -> lines.add("  stopped: " + written(stopped)));
        }
        return lines.isEmpty() ? HEAD : HEAD + String.join("\n", lines) + "\n";
    }

    private static String written(OffsetDateTime time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }
}
