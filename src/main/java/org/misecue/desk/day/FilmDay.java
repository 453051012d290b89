package org.misecue.desk.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.misecue.day.DayPlan;
import org.misecue.day.Entry;
import org.misecue.day.Standing;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Simmering;
import org.misecue.episode.Ticks;
import org.misecue.notice.BadInput;
import org.misecue.worktop.FilmingDays;

/**
 * The filming day of one episode. It is planned once, which takes seconds, and again only when somebody asks for it, or when
 * the recipe changed before anything was done.
 */
public final class FilmDay {

    private static final Duration PATIENCE = Duration.ofMillis(500);

    /**
     * How it stands.
     *
     * @param plan the last one; empty while the first is made, or where none can be
     * @param fresh whether it was made from the recipe and the settings as they are now
     * @param doing what is being done, for as long as a plan is made
     * @param fault why the last planning came to nothing
     */
    public record State(Optional<DayPlan> plan, boolean fresh, Optional<String> doing, Optional<String> fault) {}

    /** Why a planning came to nothing, and from which files. */
    private record Fault(String inputs, String sentence) {}

    private final OpenEpisode episode;
    private volatile String doing = "";
    private @Nullable Simmering<DayPlan> pan;
    private @Nullable Fault fault;

    FilmDay(OpenEpisode episode) {
        this.episode = episode;
    }

    /** As it is now; a plan that is missing is begun. */
    State look() {
        Optional<Simmering<DayPlan>> cooking = cooking();
        boolean waits = false;
        if (cooking.isPresent()) {
            try {
                waits = cooking.get().within(PATIENCE).isEmpty();
            } catch (BadInput e) {
                failed(e);
            } finally {
                if (!waits) {
                    takeOff(cooking.get());
                }
            }
        }
        Optional<FilmingDays.Kept> kept = days().kept();
        return new State(
                kept.map(FilmingDays.Kept::plan),
                kept.map(FilmingDays.Kept::fresh).orElse(true),
                waits ? Optional.of(doing.isEmpty() ? "Planning the day" : doing) : Optional.empty(),
                currentFault());
    }

    /** Plans what is left from this time on; of two who ask at once, the second gets what the first one gets. */
    void replan(LocalDateTime now) {
        begin(() -> {
            FilmingDays days = days();
            DayPlan before = days.kept().map(FilmingDays.Kept::plan).orElseGet(days::plan);
            Set<String> done = ticks().read();
            Standing standing = days.standing(
                    now,
                    before.entries().stream()
                            .filter(entry -> done.contains(key(entry)))
                            .map(Entry::id)
                            .collect(Collectors.toSet()));
            DayPlan plan = days.replan(standing);
            days.keepLate(plan);
            // What must be over because something after it is done, is ticked too: so it can be taken back by itself.
            List<String> over = plan.entries().stream()
                    .filter(Entry::done)
                    .map(FilmDay::key)
                    .toList();
            ticks().change(over, List.of(), keys(plan));
            return plan;
        });
    }

    /** Plans the whole day, as if nothing had begun. */
    void plan() {
        begin(() -> {
            FilmingDays days = days();
            DayPlan plan = days.plan();
            days.keep(plan);
            return plan;
        });
    }

    /** Ticks rows, or takes ticks back. */
    void tick(DayPlan plan, List<String> put, List<String> taken) {
        ticks().change(put, taken, keys(plan));
    }

    Set<String> done() {
        return ticks().read();
    }

    /** What the tick of a row is kept under: its number, and what it is. */
    static String key(Entry entry) {
        return entry.id() + " " + entry.what() + (entry.step() == 0 ? "" : " (step " + entry.step() + ")");
    }

    static List<String> keys(DayPlan plan) {
        return plan.entries().stream().map(FilmDay::key).toList();
    }

    private Ticks ticks() {
        return Ticks.ofDay(episode.worktop().episode());
    }

    private FilmingDays days() {
        return new FilmingDays(episode.worktop(), now -> doing = now);
    }

    private synchronized Optional<Simmering<DayPlan>> cooking() {
        if (pan == null && currentFault().isEmpty() && lacksPlan()) {
            plan();
        }
        return Optional.ofNullable(pan);
    }

    /** What was promised and ticked is not thrown away by itself. */
    private boolean lacksPlan() {
        Optional<FilmingDays.Kept> kept = days().kept();
        return kept.isEmpty() || !kept.get().fresh() && done().isEmpty();
    }

    private synchronized void begin(Supplier<DayPlan> work) {
        if (pan == null) {
            fault = null;
            doing = "";
            pan = new Simmering<>(work);
        }
    }

    private synchronized void takeOff(Simmering<DayPlan> ready) {
        if (ready.equals(pan)) {
            pan = null;
        }
    }

    private synchronized void failed(BadInput e) {
        fault = new Fault(episode.inputs(), String.valueOf(e.getMessage()));
    }

    /** A fault lasts until the files change, or somebody tries again. */
    private synchronized Optional<String> currentFault() {
        return Optional.ofNullable(fault)
                .filter(one -> one.inputs().equals(episode.inputs()))
                .map(Fault::sentence);
    }
}
