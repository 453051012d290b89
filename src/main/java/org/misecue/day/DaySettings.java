package org.misecue.day;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Who is there, what the kitchen has and what the day must respect.
 *
 * @param presenters how many cook on camera, 1 to 4
 * @param cameras how many film, 1 to 4; with two, one sets up while the other films
 * @param ovens how many, from 1
 * @param shelves how many bakes of one heat an oven takes
 * @param rings of the hob
 * @param mixer whether there is a stand mixer; without one creaming, whipping and kneading take longer
 * @param firstShot when the camera may roll first
 * @param dated whether the day of the first shot was named; else only its hours mean something
 * @param end when all must have gone home
 * @param lineUp minutes to frame, focus and slate a shot
 * @param change minutes to move camera and lights to another set-up
 * @param pauses breaks for everybody
 * @param daylight when some set-ups have their light
 * @param appointments when somebody is away, or a shot has its hour
 * @param madeEarlier steps whose result stands ready before the day, so that nothing after them waits
 * @param after for steps whose order the method leaves open, the steps that must be done before
 */
public record DaySettings(
        int presenters,
        int cameras,
        int ovens,
        int shelves,
        int rings,
        boolean mixer,
        LocalDateTime firstShot,
        boolean dated,
        Optional<LocalTime> end,
        int lineUp,
        int change,
        List<Break> pauses,
        Optional<Daylight> daylight,
        List<Appointment> appointments,
        Set<Integer> madeEarlier,
        Map<Integer, Set<Integer>> after) {

    /** A break of so many minutes that begins between two times. */
    public record Break(LocalTime from, LocalTime to, int minutes) {}

    /** Set-ups that are filmed between two times only. */
    public record Daylight(LocalTime from, LocalTime to, List<String> setUps) {}

    /** Something with an hour of its own. */
    public sealed interface Appointment {

        /** When. */
        LocalTime at();

        /** Somebody is away for so many minutes: "presenter" or "camera". */
        record Away(LocalTime at, int minutes, String who, String what) implements Appointment {}

        /** A shot begins at its hour. */
        record OfShot(LocalTime at, int shot) implements Appointment {}
    }

    /** One presenter, one camera, one oven with two shelves, four rings, a stand mixer; nothing that the clock asks. */
    public static DaySettings usual(LocalDateTime firstShot) {
        return new DaySettings(
                1,
                1,
                1,
                2,
                4,
                true,
                firstShot,
                true,
                Optional.empty(),
                2,
                5,
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of(),
                Map.of());
    }

    /** The same day with other people and equipment. */
    public DaySettings with(int otherPresenters, int otherCameras, int otherOvens, boolean hasMixer) {
        return new DaySettings(
                otherPresenters,
                otherCameras,
                otherOvens,
                shelves,
                rings,
                hasMixer,
                firstShot,
                dated,
                end,
                lineUp,
                change,
                pauses,
                daylight,
                appointments,
                madeEarlier,
                after);
    }

    public DaySettings withMadeEarlier(Set<Integer> steps) {
        return new DaySettings(
                presenters,
                cameras,
                ovens,
                shelves,
                rings,
                mixer,
                firstShot,
                dated,
                end,
                lineUp,
                change,
                pauses,
                daylight,
                appointments,
                Set.copyOf(steps),
                after);
    }
}
