package org.misecue.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.narration.Clock;
import org.misecue.shots.Shot;
import org.misecue.shots.ShotKind;

/** The log to read: what is there, what to look for, and what to film yet, with what must be seen and said. */
public final class ShotLogText {

    private static final String LOOK_FIRST =
            "Words tell where a shot probably is, not what the picture shows: look before the set is struck.";

    private ShotLogText() {}

    public static String of(ShotLog log) {
        List<String> lines = new ArrayList<>();
        lines.add(log.title() + ": shot log");
        lines.add(counts(log));
        for (Standing standing : Standing.values()) {
            List<LoggedShot> shots = log.standing(standing);
            if (!shots.isEmpty()) {
                lines.add("");
                lines.add(standing.heading());
                shots.forEach(shot -> add(shot, lines));
            }
        }
        if (!log.silent().isEmpty()) {
            lines.add("");
            lines.add("Nobody speaks in these films, and their names tell no shot (as shot-7.mp4 would): "
                    + String.join(", ", log.silent()));
        }
        lines.add("");
        lines.add(LOOK_FIRST);
        return String.join("\n", lines) + "\n";
    }

    private static String counts(ShotLog log) {
        return log.shots().size() + " shots: "
                + Stream.of(Standing.values())
                        .map(standing -> log.standing(standing).size() + " " + standing.words())
                        .collect(Collectors.joining(", "));
    }

    private static void add(LoggedShot logged, List<String> lines) {
        Shot shot = logged.shot();
        lines.add("  %-4d%s".formatted(shot.number(), head(logged)));
        logged.places().forEach(place -> lines.add("        " + line(place)));
        if (logged.standing() == Standing.MISSING) {
            lines.add("        see  " + shot.see());
            if (!shot.say().isEmpty()) {
                lines.add("        say  " + shot.say());
            }
        }
    }

    private static String head(LoggedShot logged) {
        Shot shot = logged.shot();
        List<String> parts =
                new ArrayList<>(List.of(shot.setup(), shot.technique().replace('-', ' ')));
        if (shot.step() > 0) {
            parts.add("step " + shot.step());
        }
        if (shot.kind() == ShotKind.PICKUP) {
            parts.add("pickup, if time allows");
        }
        if (logged.standing() == Standing.SLATED && logged.takesCalled() > 0) {
            parts.add(logged.takesCalled() + " of " + takes(shot.takes()) + " called");
        }
        return String.join(" – ", parts);
    }

    private static String takes(int takes) {
        return takes == 1 ? "1 take" : takes + " takes";
    }

    private static String line(LoggedShot.Place place) {
        String take = place.take() > 0 ? ", take " + place.take() : "";
        return Clock.hms(place.from()) + "–" + Clock.hms(place.to()) + "  " + place.film() + take;
    }
}
