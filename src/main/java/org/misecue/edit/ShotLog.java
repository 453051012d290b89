package org.misecue.edit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.align.Alignment;
import org.misecue.align.StepSpan;
import org.misecue.narration.Narration;
import org.misecue.shots.Shot;
import org.misecue.shots.ShotPlan;
import org.misecue.spoken.WordStream;

/**
 * The shot log: which shot of the list is in which film, and which in none. A slate that is called or stands in a film's name
 * tells it; else what is said while the step is on makes it probable. Words do not tell what the picture shows, so whoever
 * strikes the set looks first.
 *
 * @param title of the dish
 * @param shots in the order of the list
 * @param silent films in which nobody speaks and whose name tells no shot
 */
public record ShotLog(String title, List<LoggedShot> shots, List<String> silent) {

    /** @param films those of the episode, in order */
    public static ShotLog of(ShotPlan plan, Alignment alignment, List<FilmedTalk> films) {
        List<Reel> reels = films.stream().map(film -> Reel.of(film, alignment)).toList();
        List<Shot> shots = plan.shots();
        return new ShotLog(
                plan.title(),
                shots.stream().map(shot -> logged(shot, shots, reels)).toList(),
                reels.stream().filter(Reel::tellsNothing).map(Reel::file).toList());
    }

    /** Those that stand so, in the order of the list. */
    public List<LoggedShot> standing(Standing standing) {
        return shots.stream().filter(one -> one.standing() == standing).toList();
    }

    private static LoggedShot logged(Shot shot, List<Shot> shots, List<Reel> reels) {
        List<LoggedShot.Place> slated =
                reels.stream().flatMap(reel -> reel.slated(shot.number())).toList();
        if (!slated.isEmpty()) {
            return new LoggedShot(shot, Standing.SLATED, slated);
        }
        ShotWords words = ShotWords.of(shot, shots);
        List<Integer> steps = steps(shot, shots);
        List<LoggedShot.Place> spoken = reels.stream()
                .flatMap(reel -> reel.spoken(words, steps).stream())
                .toList();
        if (!spoken.isEmpty()) {
            return new LoggedShot(shot, Standing.SPOKEN, spoken);
        }
        List<LoggedShot.Place> on =
                reels.stream().flatMap(reel -> reel.on(steps)).toList();
        return new LoggedShot(shot, on.isEmpty() ? Standing.MISSING : Standing.LOOK, on);
    }

    /** Those it shows; what opens the film belongs before and to the first step, and what closes it to the last. */
    private static List<Integer> steps(Shot shot, List<Shot> shots) {
        if (shot.step() > 0) {
            return Stream.concat(Stream.of(shot.step()), shot.laterSteps().stream())
                    .toList();
        }
        List<Shot> ofSteps = shots.stream().filter(one -> one.step() > 0).toList();
        if (ofSteps.isEmpty()) {
            return List.of(0);
        }
        Shot first = ofSteps.get(0);
        return shot.number() < first.number()
                ? List.of(0, first.step())
                : List.of(ofSteps.stream().mapToInt(Shot::step).max().orElse(0));
    }

    /** A film as it is listened to. Where slates are called, they alone count. */
    private record Reel(
            FilmedTalk film,
            ShotListener ear,
            List<StepSpan> spans,
            List<Slates.Call> calls,
            Optional<Slates.Call> name) {

        static Reel of(FilmedTalk film, Alignment alignment) {
            List<String> sources =
                    film.narrations().stream().map(Narration::source).toList();
            WordStream words = WordStream.of(film.narrations());
            return new Reel(
                    film,
                    new ShotListener(words),
                    alignment.spans().stream()
                            .filter(span -> sources.contains(span.source()))
                            .toList(),
                    Slates.called(words),
                    Slates.named(film.file()));
        }

        String file() {
            return film.file();
        }

        boolean isSlated() {
            return name.isPresent() || !calls.isEmpty();
        }

        boolean tellsNothing() {
            return ear.hearsNothing() && name.isEmpty();
        }

        Stream<LoggedShot.Place> slated(int number) {
            if (calls.isEmpty()) {
                return name.stream()
                        .filter(one -> one.shot() == number)
                        .map(one -> new LoggedShot.Place(file(), Duration.ZERO, film.length(), one.take()));
            }
            List<LoggedShot.Place> places = new ArrayList<>();
            for (int i = 0; i < calls.size(); i++) {
                Slates.Call call = calls.get(i);
                if (call.shot() == number) {
                    Duration to = i + 1 < calls.size() ? calls.get(i + 1).at() : film.length();
                    places.add(new LoggedShot.Place(file(), call.at(), to, call.take()));
                }
            }
            return places.stream();
        }

        Optional<LoggedShot.Place> spoken(ShotWords wanted, List<Integer> steps) {
            if (isSlated() || wanted.weights().isEmpty()) {
                return Optional.empty();
            }
            return ear.find(wanted, during(steps).toList())
                    .map(found -> new LoggedShot.Place(file(), found.from(), found.to(), 0));
        }

        Stream<LoggedShot.Place> on(List<Integer> steps) {
            return isSlated()
                    ? Stream.empty()
                    : during(steps).map(span -> new LoggedShot.Place(file(), span.start(), span.end(), 0));
        }

        private Stream<StepSpan> during(List<Integer> steps) {
            return spans.stream().filter(span -> steps.contains(span.step()));
        }
    }
}
