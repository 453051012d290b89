package org.misecue.episode;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What {@code episode.yaml} says of the filming day; every setting may be left out.
 *
 * @param presenters who cook on camera, 1 to 4
 * @param cameras who film, 1 to 4
 * @param end when the day is over; empty for open end
 * @param lineUp minutes to frame, focus and slate a shot, 0 to 60
 * @param setUp minutes to move camera and lights to another set-up, 0 to 120
 * @param shelves how many bakes of one heat an oven takes, 1 to 9
 * @param rings of the hob, 1 to 12
 * @param standMixer whether there is one
 * @param breaks for everybody
 * @param daylight for set-ups that need it
 * @param appointments when somebody is away or a shot has its hour
 * @param after for a step the steps that must be done before it, where the method leaves it open
 */
public record FilmingDay(
        int presenters,
        int cameras,
        Optional<LocalTime> end,
        int lineUp,
        int setUp,
        int shelves,
        int rings,
        boolean standMixer,
        List<Break> breaks,
        Optional<Daylight> daylight,
        List<Appointment> appointments,
        Map<Integer, Set<Integer>> after) {

    /** One presenter, one camera, nothing that the clock asks. */
    public static final FilmingDay DEFAULT =
            new FilmingDay(1, 1, Optional.empty(), 2, 5, 2, 4, true, List.of(), Optional.empty(), List.of(), Map.of());

    /** A break of so many minutes, begun between two times. */
    public record Break(LocalTime from, LocalTime to, int minutes) {}

    /** Set-ups that are filmed between two times only. */
    public record Daylight(LocalTime from, LocalTime to, List<String> setUps) {}

    /**
     * Something with an hour of its own.
     *
     * @param minutes how long somebody is away; 0 where it is a shot's hour
     * @param who "presenter" or "camera"; empty where it is a shot's hour
     * @param shot the number of the shot; 0 where somebody is away
     * @param what in the person's words
     */
    public record Appointment(LocalTime at, int minutes, String who, int shot, String what) {}
}
