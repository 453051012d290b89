package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.misecue.notice.Note;

/**
 * The filming day.
 *
 * @param title the dish
 * @param dated whether the day was named; else only the hours mean something
 * @param entries by their beginning, then by their number
 * @param begin when the first hand is needed
 * @param firstShot when the camera rolls
 * @param end when all is done
 * @param proved whether no shorter day exists; else none was found within the effort
 * @param naiveEnd when the day would end in the order of the recipe; empty where that order cannot be kept at all
 * @param changes how often camera and lights move
 * @param idle how long the presenter stands idle between the first shot and the last hand
 * @param standIns what could be made before, and how much sooner the day would end
 * @param promised when all was to be done, for a plan of a day that has begun
 * @param slips what begins later than in the plan before; empty for a first plan
 * @param notes what was assumed or could not be kept
 */
public record DayPlan(
        String title,
        boolean dated,
        List<Entry> entries,
        LocalDateTime begin,
        LocalDateTime firstShot,
        LocalDateTime end,
        boolean proved,
        Optional<LocalDateTime> naiveEnd,
        int changes,
        Duration idle,
        List<StandIn> standIns,
        Optional<LocalDateTime> promised,
        List<Slip> slips,
        List<Note> notes) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.UK);

    /** Something that could be made before the day: the result of a step, and the time that it would save. */
    public record StandIn(int step, Duration saves) {}

    /** A row that begins later than it did in the plan before. */
    public record Slip(int id, String what, LocalDateTime was, LocalDateTime is) {}

    /** How much later a row begins than it was to. */
    public Optional<Slip> slip(Entry entry) {
        return slips.stream().filter(slip -> slip.id() == entry.id()).findFirst();
    }

    DayPlan late(List<Entry> otherEntries, Optional<LocalDateTime> promisedEnd, List<Slip> otherSlips) {
        return new DayPlan(
                title,
                dated,
                otherEntries,
                begin,
                firstShot,
                end,
                proved,
                naiveEnd,
                changes,
                idle,
                standIns,
                promisedEnd,
                otherSlips,
                notes);
    }

    /** "Monday 4 May 2026"; empty where no day was named. */
    public Optional<String> day() {
        return dated ? Optional.of(firstShot.format(DAY)) : Optional.empty();
    }

    /** Whether a time is on another day than the first shot. */
    public boolean isOtherDay(LocalDateTime time) {
        return !time.toLocalDate().equals(firstShot.toLocalDate());
    }

    /** How much sooner the day ends than in the order of the recipe; zero where that cannot be told. */
    public Duration saved() {
        return naiveEnd.map(naive -> Duration.between(end, naive)).orElse(Duration.ZERO);
    }
}
