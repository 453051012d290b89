package org.misecue.spoken;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/**
 * Numbers that say which, how old, how big a pack, how much at a time: told by the words right beside them. The first
 * label that fits tells.
 */
final class Labels implements Asides.AsideRule {

    private static final Set<String> NAMED_NUMBERS = Words.set(
            "speed shelf number page setting camera level step day night week bowl episode chapter series channel age "
                    + "aged part bus route year grade");
    private static final Set<String> HOLDS = Set.of("holds", "hold", "fits", "measures");
    private static final Set<String> MACHINES =
            Set.of("mixer", "speed", "machine", "dial", "whisk", "processor", "blender");
    private static final Set<String> SPEEDS = Set.of("low", "high");
    private static final Set<String> THIN = Words.set("nozzle tip thick wide across apart cutter plain star hole gap");
    private static final Set<String> COUNTS = Set.of("count", "counted", "go", "got", "get", "goes", "up");
    private static final Set<String> COUNTING = Set.of("count", "counting");
    private static final Set<String> FROM = Set.of("from", "off");
    private static final Set<String> TIMES = Set.of("times", "goes", "o'clock", "ways", "turns");

    private static final Set<String> INTO = Set.of("in", "into", "on", "onto", "straight");

    private record Label(Aside.Kind kind, Function<SpokenQuantity, String> reason, Predicate<SpokenQuantity> fits) {}

    private final WordStream words;
    private final Phrases phrases;
    private final Places<NameHit> names;
    private final List<Label> labels;

    Labels(WordStream words, Phrases phrases, Places<NameHit> names) {
        this.words = words;
        this.phrases = phrases;
        this.names = names;
        PackSizes packs = new PackSizes(words, phrases);
        Reckoning reckoning = new Reckoning(words);
        Portions portions = new Portions(words, phrases, names);
        Ages ages = new Ages(words);
        this.labels = List.of(
                any(Aside.Kind.PACK_SIZE, "the size of a pack", packs::isBeforePack),
                bare(Aside.Kind.COUNT, "so many by so many", this::isBy),
                bare(Aside.Kind.NAMED, "a ratio", reckoning::isRatio),
                bare(Aside.Kind.NAMED, "a step of a sum", reckoning::isStep),
                bare(Aside.Kind.NAMED, "a percentage said again", reckoning::isPercentAgain),
                any(Aside.Kind.PACK_SIZE, "the size of a pack", packs::isThePack),
                any(Aside.Kind.PORTION, "what is left", portions::isLeft),
                any(Aside.Kind.NAMED, "millimetres", this::isMillimetres),
                any(Aside.Kind.CAPACITY, "the most that something takes", this::isAtMost),
                any(Aside.Kind.PORTION, "what is not used", this::isNotUsed),
                any(Aside.Kind.PORTION, "for working with it, not in it", portions::isForTheBoard),
                bare(Aside.Kind.TIME, "a time of day", this::isClock),
                any(Aside.Kind.PACK_SIZE, "the size of a pack", packs::isToldOfPack),
                bare(Aside.Kind.NAMED, "how far something goes", this::isCountedTo),
                any(Aside.Kind.NAMED, "how far it may be off", this::isOff),
                bare(Aside.Kind.COUNT, said -> "a count of " + words.text(said.end()), this::isTimes),
                bare(Aside.Kind.AGE, "an age", ages::isAge),
                any(Aside.Kind.DRINK, "a drink", this::isDrink),
                bare(Aside.Kind.YEAR, "a year", ages::isYear),
                bare(Aside.Kind.NAMED, "a setting of the machine", this::isDial),
                any(Aside.Kind.NAMED, "a change of an amount", reckoning::isTakenOff),
                bare(
                        Aside.Kind.NAMED,
                        said -> "the number of a " + words.text(said.start() - 1),
                        this::isNumberOfThing),
                any(Aside.Kind.CAPACITY, "what something holds", this::isHeld),
                any(Aside.Kind.PORTION, "a portion, not an amount", portions::isPortion));
    }

    private static Label any(Aside.Kind kind, String reason, Predicate<SpokenQuantity> fits) {
        return new Label(kind, said -> reason, fits);
    }

    /** For numbers without a unit only. */
    private static Label bare(Aside.Kind kind, String reason, Predicate<SpokenQuantity> fits) {
        return bare(kind, said -> reason, fits);
    }

    private static Label bare(
            Aside.Kind kind, Function<SpokenQuantity, String> reason, Predicate<SpokenQuantity> fits) {
        return new Label(kind, reason, said -> said.manner() == Manner.BARE && fits.test(said));
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.LABELS;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        return labels.stream()
                .filter(label -> label.fits().test(said))
                .findFirst()
                .map(label -> Aside.of(label.kind(), label.reason().apply(said)));
    }

    /** "five by five". */
    private boolean isBy(SpokenQuantity said) {
        return words.text(said.end()).equals("by")
                || words.text(said.start() - 1).equals("by");
    }

    /** "a four mil nozzle", "two mil thick". */
    private boolean isMillimetres(SpokenQuantity said) {
        return said.unit().filter(unit -> unit == Unit.MILLILITRE).isPresent() && THIN.contains(words.text(said.end()));
    }

    /** "seventy five grams, give or take five". */
    private boolean isOff(SpokenQuantity said) {
        return words.normal(said.start() - 3, said.start()).equals("give or take");
    }

    private boolean isAtMost(SpokenQuantity said) {
        return words.text(said.end()).equals("at") && words.text(said.end() + 1).equals("most");
    }

    private boolean isNotUsed(SpokenQuantity said) {
        return phrases.endAt(Kind.NOT_USED, said.end()).isPresent();
    }

    /** "twenty past ten". */
    private boolean isClock(SpokenQuantity said) {
        return words.text(said.end()).equals("past")
                && !words.wall(said.end())
                && new NumberGrammar(words).at(said.end() + 1).isPresent();
    }

    /** "count to sixty", "got to forty", "from two hundred up to". */
    private boolean isCountedTo(SpokenQuantity said) {
        boolean counted = words.text(said.start() - 1).equals("to") && COUNTS.contains(words.text(said.start() - 2));
        boolean from = FROM.contains(words.text(said.start() - 1))
                && words.text(said.end()).equals("up")
                && words.text(said.end() + 1).equals("to");
        boolean aloud = COUNTING.contains(words.text(said.start() - 1))
                && !words.wall(said.start())
                && !words.text(said.end()).equals("of");
        return counted || from || aloud;
    }

    private boolean isTimes(SpokenQuantity said) {
        boolean goesIn = words.text(said.end()).equals("goes") && INTO.contains(words.text(said.end() + 1));
        return TIMES.contains(words.text(said.end())) && !goesIn;
    }

    /** "two coffees", "a cup of strong tea". */
    private boolean isDrink(SpokenQuantity said) {
        return phrases.endAt(Kind.DRINKS, said.end()).isPresent()
                || (words.text(said.end()).equals("of") && phrases.within(Kind.DRINKS, said.end() + 2, said.end() + 6));
    }

    /** "the mixer on four", "two on low". */
    private boolean isDial(SpokenQuantity said) {
        if (words.text(said.end()).equals("on") && SPEEDS.contains(words.text(said.end() + 1))) {
            return true;
        }
        String before = words.text(said.start() - 1);
        return (before.equals("on") || before.equals("a")) && words.saysAny(MACHINES, said.start() - 7, said.end() + 3);
    }

    /** "speed four", in one sentence. */
    private boolean isNumberOfThing(SpokenQuantity said) {
        return NAMED_NUMBERS.contains(words.text(said.start() - 1))
                && !words.wall(said.start())
                && names.in(said.end(), said.end() + 1).isEmpty(); // "in this bowl two eggs"
    }

    private boolean isHeld(SpokenQuantity said) {
        return HOLDS.contains(words.text(said.start() - 1));
    }
}
