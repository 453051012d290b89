package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Numbers that say which, how old, how big a pack, how much at a time: told by the words right beside them. */
final class Labels implements Asides.AsideRule {

    private static final Set<String> NAMED_NUMBERS = Words.set(
            "speed shelf number page setting camera level step day night week bowl episode chapter series channel age "
                    + "aged part bus route");
    private static final Set<String> HOLDS = Set.of("holds", "hold", "fits", "measures");
    private static final Set<String> BEFORE_YEAR = Set.of("in", "since", "from", "of", "till", "until", "about");
    private static final Set<String> LEAVING = Set.of("leave", "leaves", "leaving");
    private static final Set<String> IS = Set.of("is", "was", "are", "were", "turned", "turns", "be");
    private static final Set<String> PERSON = Words.set(
            "who he she they kid kids son daughter boy girl twins nephew niece grandson granddaughter child children");
    private static final Set<String> MACHINES =
            Set.of("mixer", "speed", "machine", "dial", "whisk", "processor", "blender");
    private static final Set<String> TAKING = Set.of("drop", "take", "knock", "cut", "leave", "come", "about");
    private static final Set<String> THIN = Words.set("nozzle tip thick wide across apart cutter plain star hole gap");
    private static final Set<String> SAYS = Set.of("says", "say", "is", "holds", "are", "said");
    private static final Set<String> COUNTS = Set.of("count", "counted", "go", "got", "get", "goes", "up");
    private static final Set<String> EACH_PIECE = Words.set(
            "egg white person head loaf tart tin tins tray trays layer layers bun buns ball balls piece pieces cake cakes side half portion");
    private static final Set<String> TIMES = Set.of("times", "goes", "o'clock", "ways", "turns");

    private static final int PERCENT_REACH = 15;
    private final WordStream words;
    private final Phrases phrases;

    Labels(WordStream words, Phrases phrases) {
        this.words = words;
        this.phrases = phrases;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        boolean bare = said.manner() == Manner.BARE;
        String next = words.text(said.end());
        String before = words.text(said.start() - 1);
        if (weighs(said) && QuantityWords.isPacking(words, said.end())) {
            return aside(Aside.Kind.PACK_SIZE, "the size of a pack");
        }
        if (bare && (next.equals("by") || before.equals("by"))) {
            return aside(Aside.Kind.COUNT, "so many by so many");
        }
        if (bare && isRatio(said)) {
            return aside(Aside.Kind.NAMED, "a ratio");
        }
        if (bare && (next.equals("less") || next.equals("minus") || isPercentOf(said))) {
            return aside(Aside.Kind.NAMED, "a step of a sum");
        }
        if (bare && isPercentAgain(said)) {
            return aside(Aside.Kind.NAMED, "a percentage said again");
        }
        if (isSizeOf(said)) {
            return aside(Aside.Kind.PACK_SIZE, "the size of a pack");
        }
        if (LEAVING.contains(before) && said.manner() != Manner.HEAT && !isTime(said)) {
            return aside(Aside.Kind.PORTION, "what is left");
        }
        if (isMillimetres(said)) {
            return aside(Aside.Kind.NAMED, "millimetres");
        }
        if (words.text(said.end()).equals("at") && words.text(said.end() + 1).equals("most")) {
            return aside(Aside.Kind.CAPACITY, "the most that something takes");
        }
        if (phrases.endAt(Kind.NOT_USED, said.end()).isPresent()) {
            return aside(Aside.Kind.PORTION, "what is not used");
        }
        if (isPackOf(said) || isInPack(said) || isReadOffPack(said)) {
            return aside(Aside.Kind.PACK_SIZE, "the size of a pack");
        }
        if (bare && isCountedTo(said)) {
            return aside(Aside.Kind.NAMED, "how far something goes");
        }
        if (bare && TIMES.contains(next)) {
            return aside(Aside.Kind.COUNT, "a count of " + next);
        }
        if (bare && isAge(said)) {
            return aside(Aside.Kind.AGE, "an age");
        }
        if (phrases.endAt(Kind.DRINKS, said.end()).isPresent()
                || (words.text(said.end()).equals("of")
                        && phrases.within(Kind.DRINKS, said.end() + 2, said.end() + 6))) {
            return aside(Aside.Kind.DRINK, "a drink");
        }
        if (bare && isYear(said)) {
            return aside(Aside.Kind.YEAR, "a year");
        }
        if (bare && isDial(said)) {
            return aside(Aside.Kind.NAMED, "a setting of the machine");
        }
        if (words.text(said.end()).equals("off") && TAKING.contains(before)) {
            return aside(Aside.Kind.NAMED, "a change of an amount");
        }
        if (bare && NAMED_NUMBERS.contains(before) && !words.wall(said.start())) {
            return aside(Aside.Kind.NAMED, "the number of a " + before);
        }
        if (HOLDS.contains(before)) {
            return aside(Aside.Kind.CAPACITY, "what something holds");
        }
        return isPortion(said) ? aside(Aside.Kind.PORTION, "a portion, not an amount") : Optional.empty();
    }

    /** "a spoon at a time", "two hundred on each layer", "two eighty a tin". */
    private boolean isPortion(SpokenQuantity said) {
        int at = phrases.endAt(Kind.HEDGE_AFTER, said.end()).orElse(said.end());
        if (words.text(at).equals("at")
                && words.text(at + 1).equals("a")
                && words.text(at + 2).equals("time")) {
            return true;
        }
        boolean per = words.text(at).equals("per")
                || words.text(at).equals("a")
                || words.text(at).equals("each");
        if (per && EACH_PIECE.contains(words.text(at + 1)) && !words.text(at).equals("each")) {
            return true;
        }
        boolean onEach = words.text(at + 1).equals("each")
                && (words.text(at).equals("on")
                        || words.text(at).equals("in")
                        || words.text(at).equals("into")
                        || words.text(at).equals("for"));
        return onEach
                || (words.text(at).equals("apiece") && !words.text(at + 1).equals("of"))
                || (words.text(at).equals("a") && words.text(at + 1).equals("piece"));
    }

    /** "five to one", "one to one to one". */
    private boolean isRatio(SpokenQuantity said) {
        boolean toOne = words.text(said.end()).equals("to") && isOne(words.text(said.end() + 1));
        boolean fromNumber = words.text(said.start() - 1).equals("to")
                && isOne(words.text(said.start()))
                && !words.text(said.start() - 2).isEmpty()
                && new NumberGrammar(words).at(said.start() - 2).isPresent();
        return toOne || fromNumber;
    }

    private static boolean isOne(String word) {
        return word.equals("one") || word.equals("1");
    }

    private boolean isPercentOf(SpokenQuantity said) {
        return words.text(said.start() - 1).equals("of")
                && (words.text(said.start() - 2).equals("percent")
                        || words.text(said.start() - 2).equals("%"));
    }

    /** "seventy percent, I say seventy". */
    private boolean isPercentAgain(SpokenQuantity said) {
        int length = said.end() - said.start();
        String number = words.normal(said.start(), said.end());
        for (int at = said.start() - 1; at > said.start() - PERCENT_REACH; at--) {
            if (words.text(at).equals("percent") || words.text(at).equals("%")) {
                return words.normal(at - length, at).equals(number);
            }
        }
        return false;
    }

    /** "three hundred and seventy is the jar". */
    private boolean isSizeOf(SpokenQuantity said) {
        String next = words.text(said.end());
        return (next.equals("is") || next.equals("was"))
                && words.text(said.end() + 1).equals("the")
                && QuantityWords.isPacking(words.text(said.end() + 2));
    }

    /** "a four mil nozzle", "two mil thick". */
    private boolean isMillimetres(SpokenQuantity said) {
        return said.unit().filter(unit -> unit == Unit.MILLILITRE).isPresent() && THIN.contains(words.text(said.end()));
    }

    /** "ten grams in a packet". */
    private boolean isInPack(SpokenQuantity said) {
        return weighs(said)
                && words.text(said.end()).equals("in")
                && Set.of("a", "each", "every", "the", "one").contains(words.text(said.end() + 1))
                && QuantityWords.isPacking(words.text(said.end() + 2));
    }

    /** "a tub of two hundred", "a bag of ten limes". */
    private boolean isPackOf(SpokenQuantity said) {
        return words.text(said.start() - 1).equals("of")
                && QuantityWords.isPacking(words.text(said.start() - 2))
                && said.manner() != Manner.PACKED;
    }

    /** "this carton says three hundred", "the bottle's seven hundred grams", "the tin I get is …". */
    private boolean isReadOffPack(SpokenQuantity said) {
        if (said.manner() != Manner.BARE && !weighs(said)) {
            return false;
        }
        String before = words.text(said.start() - 1);
        boolean total = before.equals("is") && words.text(said.start() - 2).equals("that");
        if (!SAYS.contains(before) || total) {
            return false;
        }
        for (int at = said.start() - 2; at >= said.start() - 5; at--) {
            if (words.text(at).equals("so")) {
                return false;
            }
            if (QuantityWords.isPacking(words, at)) {
                return !phrases.within(Kind.VIEWER, at, said.start());
            }
        }
        return false;
    }

    /** "count to sixty", "got to forty". */
    private boolean isCountedTo(SpokenQuantity said) {
        return words.text(said.start() - 1).equals("to") && COUNTS.contains(words.text(said.start() - 2));
    }

    /** "the mixer on four", "two on low". */
    private boolean isDial(SpokenQuantity said) {
        if (words.text(said.end()).equals("on")
                && (words.text(said.end() + 1).equals("low")
                        || words.text(said.end() + 1).equals("high"))) {
            return true;
        }
        if (!words.text(said.start() - 1).equals("on")
                && !words.text(said.start() - 1).equals("a")) {
            return false;
        }
        return words.saysAny(MACHINES, said.start() - 7, said.end() + 3);
    }

    private boolean isAge(SpokenQuantity said) {
        String around = words.normal(said.start() - 8, said.end() + 4);
        if (around.contains("birthday") || around.contains("years old")) {
            return true;
        }
        boolean young = said.amount().least().orElse(Rationals.ZERO).compareTo(Rationals.of(110)) < 0;
        String before = words.text(said.start() - 1);
        String twoBefore = words.text(said.start() - 2);
        return young
                && IS.contains(before)
                && PERSON.contains(twoBefore)
                && !words.text(said.end()).equals("of");
    }

    private boolean isYear(SpokenQuantity said) {
        boolean inRange = said.amount()
                .least()
                .filter(value -> value.compareTo(Rationals.of(1900)) >= 0 && value.compareTo(Rationals.of(2099)) <= 0)
                .isPresent();
        return inRange && BEFORE_YEAR.contains(words.text(said.start() - 1));
    }

    private static boolean isTime(SpokenQuantity said) {
        return said.unit()
                .filter(unit -> unit.dimension() == Dimension.DURATION)
                .isPresent();
    }

    private static boolean weighs(SpokenQuantity said) {
        return said.unit()
                .map(Unit::dimension)
                .filter(dimension -> dimension == Dimension.MASS || dimension == Dimension.VOLUME)
                .isPresent();
    }

    private static Optional<Aside> aside(Aside.Kind kind, String reason) {
        return Optional.of(Aside.of(kind, reason));
    }
}
