package org.misecue.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.quantity.Household;
import org.misecue.quantity.Unit;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;
import org.misecue.recipe.Wait;
import org.misecue.shots.Shot;
import org.misecue.shots.ShotPlan;

/** Turns method, shots and kitchen into works: what is filmed, what waits, what must follow what. */
final class DayBuilder {

    /** A bake that is ready comes out within so many minutes; common practice, no source. */
    private static final int TAKEN_OUT = 3;

    private static final int TAKING_OUT = 2;

    /** Minutes that an oven takes to heat or to change its heat; common practice, no source: 15 to 30. */
    private static final int HEATING = 25;

    private static final Set<String> ON_HOB = Set.of("simmer", "boil", "caramelise", "melt", "warm", "fry", "toast");
    private static final Set<String> IN_MIXER = Set.of("cream", "beat", "whip", "knead");

    static final String HOB = "hob";
    static final String MIXER = "mixer";
    static final String OVEN = "oven";
    static final String FRIDGE = "fridge";

    private final Recipe recipe;
    private final MethodOrder order;
    private final Holds holds;
    private final Subjects subjects;
    private final DaySettings settings;
    private final ShotsOfStretches shots;

    private final List<Task> tasks = new ArrayList<>();
    private final List<Work> works = new ArrayList<>();
    private final List<Lag> lags = new ArrayList<>();
    private final Map<Integer, Integer> first = new HashMap<>();
    private final Map<Integer, Integer> last = new HashMap<>();

    DayBuilder(Recipe recipe, ShotPlan plan, DaySettings settings) {
        this.recipe = recipe;
        this.settings = settings;
        this.order = MethodOrder.of(recipe).with(settings.after());
        this.holds = new Holds(recipe, order);
        this.subjects = new Subjects(recipe, order);
        this.shots = new ShotsOfStretches(order, plan);
    }

    Day build() {
        List<Integer> openers = shots.before().isEmpty() ? List.of() : film(shots.before(), 0, "Opening", 0);
        for (int at = 0; at < order.stretches().size(); at++) {
            stretch(at);
        }
        for (int at = 0; at < order.stretches().size(); at++) {
            for (int before : order.needs(at)) {
                need(before, at);
            }
            for (int opener : openers) {
                lags.add(Lag.then(opener, first(at)));
            }
        }
        chain(openers);
        dropIdleWaits();
        closers();
        return new Day(
                new Project(
                        works,
                        lags,
                        means(),
                        settings.ovens(),
                        settings.shelves(),
                        settings.change(),
                        new Limits(settings, tasks).list()),
                tasks);
    }

    private int first(int stretch) {
        return first.getOrDefault(stretch, 0);
    }

    private int last(int stretch) {
        return last.getOrDefault(stretch, 0);
    }

    private Map<String, Integer> means() {
        Map<String, Integer> means = new LinkedHashMap<>();
        means.put(Project.PRESENTER, settings.presenters());
        means.put(Project.CAMERA, settings.cameras());
        means.put(HOB, settings.rings());
        if (settings.mixer()) {
            means.put(MIXER, 1);
        }
        return means;
    }

    /** The hands, then one wait after the other; what comes out of the oven is taken out in between. */
    private void stretch(int at) {
        Stretch stretch = order.stretches().get(at);
        List<Integer> chain = new ArrayList<>(hands(at, stretch));
        List<Shot> out = shots.out(at);
        for (Wait wait : stretch.waits()) {
            int waiting = add(
                    new Work((int) wait.most().toMinutes(), Map.of(), heat(wait), Optional.empty()),
                    Entry.Kind.WAIT,
                    subjects.waiting(at, wait),
                    stretch.step(),
                    List.of(),
                    "",
                    where(wait));
            if (!chain.isEmpty()) {
                int before = chain.get(chain.size() - 1);
                lags.add(new Lag(before, waiting, 0, OptionalInt.of(0), Optional.empty()));
            }
            chain.add(waiting);
            if (wait.where() == Wait.Where.OVEN) {
                List<Integer> taken = takeOut(at, stretch, out);
                out = List.of();
                lags.add(Lag.within(
                        waiting, taken.get(0), TAKEN_OUT, "step " + stretch.step() + " comes out of the oven on time"));
                chain(taken);
                chain.addAll(taken);
            }
        }
        first.put(at, chain.get(0));
        last.put(at, chain.get(chain.size() - 1));
    }

    private List<Integer> hands(int at, Stretch stretch) {
        List<Shot> filmed = shots.of(at);
        int minutes = minutes(stretch);
        if (filmed.isEmpty()) {
            return List.of(add(
                    new Work(minutes, takes(stretch.techniques(), false), Optional.empty(), Optional.empty()),
                    Entry.Kind.HANDS,
                    subjects.doing(at, stretch.techniques()),
                    stretch.step(),
                    List.of(),
                    "",
                    tools(stretch.techniques())));
        }
        List<Integer> blocks = new ArrayList<>();
        int each = Math.max(1, Math.round((float) minutes / filmed.size()));
        for (List<Shot> block : bySetUp(filmed)) {
            blocks.add(filmed(block, each, at, stretch, Entry.Kind.FILM));
        }
        chain(blocks);
        return blocks;
    }

    private List<Integer> takeOut(int at, Stretch stretch, List<Shot> filmed) {
        if (filmed.isEmpty()) {
            return List.of(add(
                    new Work(TAKING_OUT, Map.of(Project.PRESENTER, 1), Optional.empty(), Optional.empty()),
                    Entry.Kind.TAKE_OUT,
                    subjects.takingOut(at),
                    stretch.step(),
                    List.of(),
                    "",
                    List.of()));
        }
        List<Integer> blocks = new ArrayList<>();
        for (List<Shot> block : bySetUp(filmed)) {
            blocks.add(filmed(block, TAKING_OUT, at, stretch, Entry.Kind.TAKE_OUT));
        }
        return blocks;
    }

    private int filmed(List<Shot> block, int each, int at, Stretch stretch, Entry.Kind kind) {
        boolean out = kind == Entry.Kind.TAKE_OUT;
        int minutes = block.stream()
                .mapToInt(shot -> (out ? 0 : settings.lineUp()) + (out ? 1 : shot.takes()) * each)
                .sum();
        List<String> techniques = block.stream().map(Shot::technique).distinct().toList();
        return add(
                new Work(
                        minutes,
                        out ? Map.of(Project.PRESENTER, 1, Project.CAMERA, 1) : takes(techniques, true),
                        Optional.empty(),
                        Optional.of(block.get(0).setup())),
                kind,
                out && techniques.contains("bake") ? subjects.takingOut(at) : subjects.doing(at, techniques),
                stretch.step(),
                block.stream().map(Shot::number).toList(),
                block.get(0).setup(),
                out ? List.of() : tools(techniques));
    }

    /** Shots without a step, in blocks of one set-up; every shot once per take, and a minute of it. */
    private List<Integer> film(List<Shot> filmed, int step, String what, int tail) {
        List<Integer> blocks = new ArrayList<>();
        for (List<Shot> block : bySetUp(filmed)) {
            int minutes = block.stream()
                    .mapToInt(shot -> settings.lineUp() + shot.takes())
                    .sum();
            blocks.add(add(
                    new Work(
                            minutes + tail,
                            Map.of(Project.PRESENTER, 1, Project.CAMERA, 1),
                            Optional.empty(),
                            Optional.of(block.get(0).setup())),
                    Entry.Kind.FILM,
                    what + ": "
                            + block.stream()
                                    .map(shot -> shot.technique().replace('-', ' '))
                                    .distinct()
                                    .collect(Collectors.joining(", ")),
                    step,
                    block.stream().map(Shot::number).toList(),
                    block.get(0).setup(),
                    List.of()));
        }
        return blocks;
    }

    private static List<List<Shot>> bySetUp(List<Shot> filmed) {
        List<List<Shot>> blocks = new ArrayList<>();
        for (Shot shot : filmed) {
            if (blocks.isEmpty()
                    || !blocks.get(blocks.size() - 1).get(0).setup().equals(shot.setup())) {
                blocks.add(new ArrayList<>());
            }
            blocks.get(blocks.size() - 1).add(shot);
        }
        return blocks;
    }

    /** By hand, what a machine would do takes half as long again; common practice, no source. */
    private int minutes(Stretch stretch) {
        int minutes = (int) Math.max(1, stretch.handsOn().toMinutes());
        return usesMixer(stretch.techniques()) && !settings.mixer() ? minutes + (minutes + 1) / 2 : minutes;
    }

    private Map<String, Integer> takes(List<String> techniques, boolean camera) {
        Map<String, Integer> takes = new HashMap<>();
        takes.put(Project.PRESENTER, 1);
        if (camera) {
            takes.put(Project.CAMERA, 1);
        }
        tools(techniques).forEach(tool -> takes.put(tool, 1));
        return takes;
    }

    private List<String> tools(List<String> techniques) {
        List<String> tools = new ArrayList<>();
        if (techniques.stream().anyMatch(ON_HOB::contains)) {
            tools.add(HOB);
        }
        if (usesMixer(techniques) && settings.mixer()) {
            tools.add(MIXER);
        }
        return tools;
    }

    private static boolean usesMixer(List<String> techniques) {
        return techniques.stream().anyMatch(IN_MIXER::contains);
    }

    private Optional<Work.Heat> heat(Wait wait) {
        if (wait.where() != Wait.Where.OVEN) {
            return Optional.empty();
        }
        int celsius = wait.oven()
                .map(quantity -> quantity.in(Unit.CELSIUS, Household.METRIC))
                .flatMap(quantity -> quantity.amount().most())
                .map(figure -> (int) Math.round(figure.doubleValue() / 5) * 5)
                .orElse(0);
        return Optional.of(new Work.Heat(celsius, HEATING));
    }

    private static List<String> where(Wait wait) {
        return switch (wait.where()) {
            case OVEN -> List.of(OVEN);
            case FRIDGE -> List.of(FRIDGE);
            case FREEZER -> List.of("freezer");
            case ROOM -> List.of();
        };
    }

    private int add(
            Work work, Entry.Kind kind, String what, int step, List<Integer> numbers, String setUp, List<String> with) {
        works.add(work);
        tasks.add(new Task(tasks.size() + 1, kind, what, step, numbers, setUp, with));
        return works.size() - 1;
    }

    private void chain(List<Integer> blocks) {
        for (int at = 1; at < blocks.size(); at++) {
            lags.add(Lag.then(blocks.get(at - 1), blocks.get(at)));
        }
    }

    /** What was made earlier is waited for by nobody but the camera that shows it being made. */
    private void need(int before, int at) {
        int madeIn = order.stretches().get(before).step();
        boolean sameStep = madeIn == order.stretches().get(at).step();
        if (settings.madeEarlier().contains(madeIn) && !sameStep) {
            lags.add(Lag.then(first(before), first(at)));
            return;
        }
        Optional<Hold> hold = holds.between(before, at);
        String wish = "step " + order.stretches().get(at).step() + " follows step " + madeIn;
        lags.add(hold.map(limit -> Lag.within(
                        last(before),
                        first(at),
                        limit.minutes(),
                        wish + " within " + limit.minutes() + " min: " + limit.why()))
                .orElseGet(() -> Lag.then(last(before), first(at))));
    }

    /** Waits that nothing follows, because something made earlier stands in, need no place in the day. */
    private void dropIdleWaits() {
        Set<Integer> idle = new HashSet<>();
        boolean more = !settings.madeEarlier().isEmpty();
        while (more) {
            more = false;
            for (int at = works.size() - 1; at >= 0; at--) {
                int work = at;
                boolean followed = lags.stream().anyMatch(lag -> lag.before() == work && !idle.contains(lag.after()));
                Task task = tasks.get(at);
                boolean swapped = settings.madeEarlier().contains(task.step());
                if (!idle.contains(at)
                        && !followed
                        && swapped
                        && task.kind() == Entry.Kind.WAIT
                        && works.get(at).heat().isEmpty()) {
                    more = idle.add(at);
                }
            }
        }
        idle.forEach(at -> works.set(at, new Work(0, Map.of(), Optional.empty(), Optional.empty())));
    }

    /** The whole bake, once everything else is done; short shots to cut away to whenever there is time. */
    private void closers() {
        int number = works.size();
        List<Integer> ends = new ArrayList<>();
        for (int at = 0; at < number; at++) {
            int work = at;
            if (lags.stream().noneMatch(lag -> lag.before() == work)) {
                ends.add(at);
            }
        }
        List<Integer> closers = shots.after().isEmpty() ? List.of() : film(shots.after(), 0, "Closing", 0);
        chain(closers);
        if (!closers.isEmpty()) {
            ends.forEach(end -> lags.add(Lag.then(end, closers.get(0))));
        }
    }
}
