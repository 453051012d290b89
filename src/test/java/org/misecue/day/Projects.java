package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Small projects drawn from a seed: works, lags, ovens and, if wanted, what the clock asks. */
final class Projects {

    private static final List<String> SET_UPS = List.of("overhead", "front", "close");

    private Projects() {}

    /** Works, lags and means only. */
    static Arbitrary<Project> plain() {
        return Arbitraries.longs().map(seed -> new Draw(seed).plain());
    }

    /** With ovens, set-ups, breaks, absences and daylight. */
    static Arbitrary<Project> days() {
        return Arbitraries.longs().map(seed -> new Draw(seed).day());
    }

    private record Draw(Random random) {

        Draw(long seed) {
            this(new Random(seed));
        }

        Project plain() {
            List<Work> works = new ArrayList<>();
            int number = 3 + random.nextInt(6);
            for (int at = 0; at < number; at++) {
                works.add(new Work(
                        random.nextInt(10),
                        Map.of("a", random.nextInt(3), "b", random.nextInt(4)),
                        Optional.empty(),
                        Optional.empty()));
            }
            return Project.plain(works, lags(number), Map.of("a", 2, "b", 3));
        }

        Project day() {
            List<Work> works = new ArrayList<>();
            int number = 4 + random.nextInt(8);
            for (int at = 0; at < number; at++) {
                works.add(work());
            }
            List<Lag> lags = lags(number);
            List<Limit> limits = limits(number);
            for (int bake = 0; bake < number; bake++) {
                if (works.get(bake).heat().isPresent() && random.nextInt(2) == 0) {
                    Work.Heat heat = works.get(bake).heat().orElseThrow();
                    works.add(new Work(
                            3,
                            Map.of(Project.PRESENTER, 1, Project.CAMERA, 1),
                            Optional.of(new Work.Heat(heat.celsius(), 0)),
                            Optional.of("dial")));
                    int dial = works.size() - 1;
                    lags.add(new Lag(dial, bake, heat.heating(), OptionalInt.empty(), Optional.empty()));
                    limits.add(new Limit.SameOven(dial, bake));
                }
            }
            return new Project(
                    works,
                    lags,
                    Map.of(Project.PRESENTER, 1 + random.nextInt(2), Project.CAMERA, 1 + random.nextInt(2), "hob", 1),
                    1 + random.nextInt(2),
                    1 + random.nextInt(2),
                    random.nextInt(6),
                    limits);
        }

        private Work work() {
            int minutes = 1 + random.nextInt(20);
            return switch (random.nextInt(4)) {
                case 0 ->
                    new Work(
                            minutes,
                            Map.of(),
                            Optional.of(new Work.Heat(160 + 20 * random.nextInt(3), 10)),
                            Optional.empty());
                case 1 -> new Work(minutes, Map.of(Project.PRESENTER, 1, "hob", 1), Optional.empty(), Optional.empty());
                case 2 -> new Work(minutes, Map.of(), Optional.empty(), Optional.empty());
                default ->
                    new Work(
                            minutes,
                            Map.of(Project.PRESENTER, 1, Project.CAMERA, 1),
                            Optional.empty(),
                            Optional.of(SET_UPS.get(random.nextInt(SET_UPS.size()))));
            };
        }

        private List<Lag> lags(int number) {
            List<Lag> lags = new ArrayList<>();
            for (int after = 1; after < number; after++) {
                for (int before = 0; before < after; before++) {
                    if (random.nextInt(4) == 0) {
                        int least = random.nextInt(3) * random.nextInt(5);
                        lags.add(
                                random.nextInt(5) == 0
                                        ? new Lag(
                                                before,
                                                after,
                                                least,
                                                OptionalInt.of(least + random.nextInt(30)),
                                                Optional.of(before + " holds for " + after))
                                        : new Lag(before, after, least, OptionalInt.empty(), Optional.empty()));
                    }
                }
            }
            return lags;
        }

        private List<Limit> limits(int number) {
            List<Limit> limits = new ArrayList<>();
            if (random.nextInt(2) == 0) {
                int earliest = random.nextInt(60);
                limits.add(new Limit.Pause(earliest, earliest + random.nextInt(60), 15, "a break"));
            }
            if (random.nextInt(3) == 0) {
                int from = random.nextInt(60);
                limits.add(new Limit.Away(Project.PRESENTER, from, from + 10, "the telephone"));
            }
            if (random.nextInt(3) == 0) {
                limits.add(new Limit.Window(Set.of(random.nextInt(number)), 20, 120, "daylight"));
            }
            if (random.nextInt(4) == 0) {
                limits.add(new Limit.DayEnd(90 + random.nextInt(120), "home"));
            }
            if (random.nextInt(4) == 0) {
                limits.add(new Limit.At(random.nextInt(number), random.nextInt(90), "a shot at its hour"));
            }
            return limits;
        }
    }
}
