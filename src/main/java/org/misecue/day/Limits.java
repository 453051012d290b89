package org.misecue.day;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** The wishes of a day's settings as limits of its project. */
final class Limits {

    private static final String SETTINGS = "episode.yaml";

    private final DaySettings settings;
    private final List<Task> tasks;

    Limits(DaySettings settings, List<Task> tasks) {
        this.settings = settings;
        this.tasks = tasks;
    }

    List<Limit> list() {
        List<Limit> limits = new ArrayList<>();
        settings.end().ifPresent(end -> limits.add(new Limit.DayEnd(minute(end), "the day ends by " + end)));
        for (DaySettings.Break pause : settings.pauses()) {
            limits.add(new Limit.Pause(
                    Math.max(0, minute(pause.from())),
                    Math.max(0, minute(pause.to())),
                    pause.minutes(),
                    "a break of %d min begins between %s and %s".formatted(pause.minutes(), pause.from(), pause.to())));
        }
        settings.daylight()
                .ifPresent(light -> limits.add(new Limit.Window(
                        filmedIn(light.setUps()),
                        Math.max(0, minute(light.from())),
                        Math.max(0, minute(light.to())),
                        "daylight from %s to %s for %s"
                                .formatted(light.from(), light.to(), String.join(", ", light.setUps())))));
        settings.appointments().forEach(appointment -> limits.add(limit(appointment)));
        return limits;
    }

    private Limit limit(DaySettings.Appointment appointment) {
        int minute = Math.max(0, minute(appointment.at()));
        if (appointment instanceof DaySettings.Appointment.OfShot shot) {
            return new Limit.At(workOf(shot.shot()), minute, "shot %d begins at %s".formatted(shot.shot(), shot.at()));
        }
        DaySettings.Appointment.Away away = (DaySettings.Appointment.Away) appointment;
        return new Limit.Away(
                away.who(),
                minute,
                minute + away.minutes(),
                "%s away at %s for %d min%s"
                        .formatted(
                                away.who(),
                                away.at(),
                                away.minutes(),
                                away.what().isEmpty() ? "" : ": " + away.what()));
    }

    private Set<Integer> filmedIn(List<String> setUps) {
        List<String> known = tasks.stream()
                .map(Task::setUp)
                .filter(setUp -> !setUp.isEmpty())
                .distinct()
                .sorted()
                .toList();
        setUps.stream().filter(setUp -> !known.contains(setUp)).findFirst().ifPresent(unknown -> {
            throw new BadInput(
                    Place.of(SETTINGS),
                    "day: daylight: no shot is filmed in “%s”; the set-ups are %s."
                            .formatted(unknown, String.join(", ", known)));
        });
        return IntStream.range(0, tasks.size())
                .filter(at -> setUps.contains(tasks.get(at).setUp()))
                .boxed()
                .collect(Collectors.toSet());
    }

    private int workOf(int shot) {
        return IntStream.range(0, tasks.size())
                .filter(at -> tasks.get(at).shots().contains(shot))
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        Place.of(SETTINGS),
                        "day: appointments: there is no shot %d; the shot list ends with shot %d."
                                .formatted(
                                        shot,
                                        tasks.stream()
                                                .flatMap(task -> task.shots().stream())
                                                .max(Integer::compare)
                                                .orElse(0))));
    }

    private int minute(LocalTime time) {
        return (int) Duration.between(settings.firstShot().toLocalTime(), time).toMinutes();
    }
}
