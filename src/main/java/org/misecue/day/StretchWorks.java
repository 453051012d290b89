package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.quantity.Household;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Stretch;
import org.misecue.recipe.Wait;
import org.misecue.shots.Shot;

/** A stretch of the method as works: the hands, then one wait after the other; what has baked is taken out in between. */
final class StretchWorks {

    /** A bake that is ready comes out within so many minutes; common practice, no source. */
    private static final int TAKEN_OUT = 3;

    /** Minutes to take a bake out of the oven; common practice, no source. */
    private static final int TAKING_OUT = 2;

    /** Minutes to turn the oven and what is in it; common practice, no source. */
    private static final int TURNING = 1;

    /** Minutes that an oven takes to heat or to change its heat; common practice, no source: 15 to 30. */
    private static final int HEATING = 25;

    private static final String FRIDGE = "fridge";
    private static final String FREEZER = "freezer";

    private final Works works;
    private final FilmedWorks filmed;
    private final Tools tools;
    private final Subjects subjects;
    private final Dials dials = new Dials();

    StretchWorks(Works works, FilmedWorks filmed, Tools tools, Subjects subjects) {
        this.works = works;
        this.filmed = filmed;
        this.tools = tools;
        this.subjects = subjects;
    }

    /**
     * The works of a stretch that others hang on.
     *
     * @param first begins it
     * @param last ends it
     * @param beside must have been filmed, too, before something else is done with it
     */
    record Span(int first, int last, List<Integer> beside) {
        static final Span NONE = new Span(0, 0, List.of());
    }

    Dials dials() {
        return dials;
    }

    Span of(int at, Stretch stretch, ShotsOfStretches shots) {
        List<Integer> chain = new ArrayList<>(hands(at, stretch, shots.of(at)));
        List<Integer> beside = new ArrayList<>();
        List<Shot> out = shots.out(at);
        OptionalInt inOven = OptionalInt.empty();
        for (int turn = 0; turn < stretch.waits().size(); turn++) {
            Wait wait = stretch.waits().get(turn);
            if (isOnlyHeating(stretch, wait)) {
                continue;
            }
            int waiting = waiting(at, stretch, wait);
            if (!chain.isEmpty()) {
                int before = chain.get(chain.size() - 1);
                works.lag(
                        dials.isDial(before)
                                ? Lag.then(before, waiting) // the oven heats in between
                                : new Lag(before, waiting, 0, OptionalInt.of(0), Optional.empty()));
            }
            chain.add(waiting);
            if (wait.where() == Wait.Where.OVEN) {
                inOven.ifPresent(before -> works.limit(new Limit.GoesOn(before, waiting)));
                boolean goesOn = isInOven(stretch, turn + 1);
                inOven = goesOn ? OptionalInt.of(waiting) : OptionalInt.empty();
                if (!isInOven(stretch, turn - 1)) {
                    dials.bake(waiting, at);
                }
                List<Integer> taken = goesOn ? turned(at, stretch) : takeOut(at, stretch, out);
                out = goesOn ? out : List.of();
                works.lag(Lag.within(
                        waiting, taken.get(0), TAKEN_OUT, "step " + stretch.step() + " comes out of the oven on time"));
                works.chain(taken);
                chain.add(taken.get(0)); // what waits next has begun to wait by then
                beside.addAll(taken.subList(1, taken.size()));
            }
        }
        return new Span(chain.get(0), chain.get(chain.size() - 1), beside);
    }

    /** "Half an hour before, put a pot in the oven and heat to 240 °C" bakes nothing. */
    private static boolean isOnlyHeating(Stretch stretch, Wait wait) {
        return wait.where() == Wait.Where.OVEN
                && wait.what().isEmpty()
                && stretch.techniques().equals(List.of(Dials.TECHNIQUE));
    }

    private static boolean isInOven(Stretch stretch, int turn) {
        return turn >= 0
                && turn < stretch.waits().size()
                && stretch.waits().get(turn).where() == Wait.Where.OVEN;
    }

    /** The oven is turned, a lid taken off, a tray turned round, and it goes on baking. */
    private List<Integer> turned(int at, Stretch stretch) {
        return List.of(works.add(
                new Work(TURNING, Map.of(Project.PRESENTER, 1), Optional.empty(), Optional.empty()),
                Entry.Kind.HANDS,
                subjects.turning(at),
                stretch.step(),
                Works.Filmed.NOTHING,
                List.of()));
    }

    private List<Integer> hands(int at, Stretch stretch, List<Shot> shots) {
        if (shots.isEmpty()) {
            return List.of(works.add(
                    new Work(
                            tools.minutes(stretch),
                            tools.takes(stretch.techniques(), false),
                            Optional.empty(),
                            Optional.empty()),
                    Entry.Kind.HANDS,
                    subjects.doing(at, stretch.techniques()),
                    stretch.step(),
                    Works.Filmed.NOTHING,
                    tools.of(stretch.techniques())));
        }
        List<Integer> places = new ArrayList<>();
        int each = FilmedWorks.each(tools.minutes(stretch), shots);
        for (FilmedWorks.Block block : FilmedWorks.blocks(shots)) {
            int place = works.add(
                    new Work(
                            filmed.minutes(block, each),
                            tools.takes(block.techniques(), true),
                            Optional.empty(),
                            Optional.of(block.setUp())),
                    Entry.Kind.FILM,
                    subjects.doing(at, block.techniques()),
                    stretch.step(),
                    block.filmed(),
                    block.isDial() ? List.of(DayBuilder.OVEN) : tools.of(block.techniques()));
            if (block.isDial()) {
                dials.dial(place, at);
            }
            places.add(place);
        }
        works.chain(places);
        return places;
    }

    private int waiting(int at, Stretch stretch, Wait wait) {
        Optional<Work.Heat> heat =
                wait.where() == Wait.Where.OVEN ? Optional.of(new Work.Heat(celsius(wait), HEATING)) : Optional.empty();
        return works.add(
                new Work((int) wait.most().toMinutes(), Map.of(), heat, Optional.empty()),
                Entry.Kind.WAIT,
                subjects.waiting(at, wait),
                stretch.step(),
                Works.Filmed.NOTHING,
                where(wait));
    }

    private List<Integer> takeOut(int at, Stretch stretch, List<Shot> shots) {
        if (shots.isEmpty()) {
            return List.of(works.add(
                    new Work(TAKING_OUT, Map.of(Project.PRESENTER, 1), Optional.empty(), Optional.empty()),
                    Entry.Kind.TAKE_OUT,
                    subjects.takingOut(at),
                    stretch.step(),
                    Works.Filmed.NOTHING,
                    List.of()));
        }
        List<Integer> places = new ArrayList<>();
        for (FilmedWorks.Block block : FilmedWorks.blocks(shots)) {
            places.add(works.add(
                    new Work(
                            block.shots().size() * TAKING_OUT,
                            FilmedWorks.ON_CAMERA,
                            Optional.empty(),
                            Optional.of(block.setUp())),
                    Entry.Kind.TAKE_OUT,
                    block.techniques().contains("bake")
                            ? subjects.takingOut(at)
                            : subjects.doing(at, block.techniques()),
                    stretch.step(),
                    block.filmed(),
                    List.of()));
        }
        return places;
    }

    private static int celsius(Wait wait) {
        return wait.oven()
                .map(quantity -> quantity.in(Unit.CELSIUS, Household.METRIC))
                .flatMap(quantity -> quantity.amount().most())
                .map(figure -> (int) Math.round(figure.doubleValue() / 5) * 5)
                .orElse(0);
    }

    private static List<String> where(Wait wait) {
        return switch (wait.where()) {
            case OVEN -> List.of(DayBuilder.OVEN);
            case FRIDGE -> List.of(FRIDGE);
            case FREEZER -> List.of(FREEZER);
            case ROOM -> List.of();
        };
    }
}
