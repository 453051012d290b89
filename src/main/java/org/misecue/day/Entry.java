package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalInt;

/**
 * One row of the call sheet.
 *
 * @param id stays the same when the day is planned again
 * @param kind what sort of work
 * @param what in a person's words
 * @param step of the method; 0 for none
 * @param start when it begins
 * @param end when it ends
 * @param who people that it keeps busy: "presenter", "camera"
 * @param with equipment that it keeps busy: "oven 1", "hob"
 * @param shots numbers of the shots filmed in it
 * @param setUp the camera set-up; empty where nothing is filmed
 * @param critical whether the day ends later if this begins later
 * @param done whether it is finished, on a day that has begun
 */
public record Entry(
        int id,
        Kind kind,
        String what,
        int step,
        LocalDateTime start,
        LocalDateTime end,
        List<String> who,
        List<String> with,
        List<Integer> shots,
        String setUp,
        boolean critical,
        boolean done) {

    /** Which oven it keeps busy, from 0. */
    public OptionalInt oven() {
        return with.stream()
                .filter(name -> name.startsWith(DayBuilder.OVEN))
                .mapToInt(name -> name.equals(DayBuilder.OVEN)
                        ? 0
                        : Integer.parseInt(
                                        name.substring(DayBuilder.OVEN.length()).strip())
                                - 1)
                .findFirst();
    }

    /** The same at another time, just as long. */
    Entry with(LocalDateTime otherStart, boolean isDone) {
        return new Entry(
                id,
                kind,
                what,
                step,
                otherStart,
                otherStart.plus(Duration.between(start, end)),
                who,
                with,
                shots,
                setUp,
                critical && !isDone,
                isDone);
    }

    /** The sorts of work, for a legend. */
    public enum Kind {
        FILM("filmed"),
        HANDS("hands, off camera"),
        TAKE_OUT("out of the oven"),
        WAIT("waits by itself"),
        HEAT("oven heats up"),
        JOB("small job"),
        PAUSE("break"),
        AWAY("away");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
