package org.misecue.compare;

import java.util.EnumSet;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/**
 * What a figure is about, by the telling words on either side of it: the nearer weigh more, those before it a little more
 * than those behind, and less still beyond another figure or where the speaker goes on to the next thing.
 */
final class Surroundings {

    private static final int BEFORE = 18;
    private static final int BEHIND = 11;

    /** At so many words from the figure a word weighs half. This and the other weights are from listening; no source. */
    private static final double HALF_AT = 5;

    private static final double SIDE_BEHIND = 0.85;
    private static final double JOINT = 0.75;
    private static final double OTHER_FIGURE = 0.35;
    private static final double OTHERS_WORD = 0.5;
    private static final Set<String> JOINTS = Set.of("and", "then", "so", "but", "now", "right", "because");

    private static final int NEGATION_REACH = 4;
    private static final Set<Kind> WAITING = EnumSet.range(Kind.FOR_PROVING, Kind.FOR_LEAVING);
    private static final Set<String> PEOPLE = Set.of("i", "we", "you", "please");
    private static final Set<String> IDLE = Set.of("stand", "sit", "rest");
    private static final Set<String> OBJECTS = Set.of("it", "them", "this", "that", "mine", "the", "her", "him");

    private final Hearing heard;

    Surroundings(Hearing heard) {
        this.heard = heard;
    }

    /** How strongly the words around speak of any of the kinds: 1 right before the figure, 0 not at all. */
    double weight(SpokenQuantity said, Kind... kinds) {
        return Stream.of(kinds)
                .mapToDouble(kind -> Math.max(before(said, kind), SIDE_BEHIND * behind(said, kind)))
                .max()
                .orElse(0);
    }

    /** The same by the words behind the figure alone. */
    double weightBehind(SpokenQuantity said, Kind kind) {
        return SIDE_BEHIND * behind(said, kind);
    }

    private double before(SpokenQuantity said, Kind kind) {
        double fade = 1;
        for (int at = said.start() - 1; at >= said.start() - BEFORE && isNear(at, said); at--) {
            OptionalInt end = heard.phrases.endAt(kind, at);
            if (end.isPresent()
                    && end.getAsInt() <= said.start()
                    && !isInOven(kind, at)
                    && !isDoneByPerson(at, end.getAsInt())) {
                return fade / (1 + (said.start() - end.getAsInt()) / HALF_AT);
            }
            fade *= fadeAt(at, said) * (heard.words.wall(at) ? JOINT : 1);
        }
        return 0;
    }

    private double behind(SpokenQuantity said, Kind kind) {
        double fade = 1;
        for (int at = said.end(); at < said.end() + BEHIND && isNear(at, said); at++) {
            fade *= heard.words.wall(at) ? JOINT : 1;
            if (heard.phrases.endAt(Kind.OTHER_TIME, at).isPresent()) {
                return 0;
            }
            OptionalInt end = heard.phrases.endAt(kind, at);
            if (end.isPresent() && !isDenied(kind, at) && !isInOven(kind, at) && !isDoneByPerson(at, end.getAsInt())) {
                double taken = isOfNext(end.getAsInt(), said) ? OTHERS_WORD : 1;
                return taken * fade / (1 + (at - said.end()) / HALF_AT);
            }
            fade *= fadeAt(at, said);
        }
        return 0;
    }

    /** "eight hours, don't put it in the fridge"; work that is denied behind a time is spoken of all the same. */
    private boolean isDenied(Kind kind, int at) {
        if (!WAITING.contains(kind)) {
            return false;
        }
        int from = at;
        while (from > at - NEGATION_REACH && !heard.words.wall(from) && !JOINTS.contains(heard.words.text(from - 1))) {
            from--;
        }
        return heard.phrases.within(Kind.NEGATES, from, at);
    }

    /** The rack of "on the top rack" is the oven's. */
    private boolean isInOven(Kind kind, int at) {
        return kind != Kind.FOR_BAKING
                && heard.phrases.endAt(Kind.FOR_BAKING, at - 1).orElse(at) > at;
    }

    /** "I stand in front of the oven": people stand and sit, too. */
    private boolean isDoneByPerson(int at, int end) {
        return PEOPLE.contains(heard.words.text(at - 1))
                && IDLE.contains(heard.words.text(at))
                && !OBJECTS.contains(heard.words.text(end));
    }

    /** "an hour, then chill it ten minutes", "half an hour, the oven is on": the word begins something new. */
    private boolean isOfNext(int end, SpokenQuantity said) {
        return heard.words.text(end).equals("is")
                || heard.quantityFrom(end)
                        .filter(next -> next.start() - end <= 2)
                        .filter(next -> isAlike(next, said) || next.unit().isEmpty())
                        .isPresent();
    }

    private boolean isNear(int at, SpokenQuantity said) {
        return at >= 0 && at < heard.words.size() && heard.sameSource(at, said.start());
    }

    private double fadeAt(int at, SpokenQuantity said) {
        if (JOINTS.contains(heard.words.text(at))) {
            return JOINT;
        }
        return heard.quantityFrom(at)
                .filter(figure -> figure.start() == at && figure.manner() != Manner.BARE)
                .map(figure -> isAlike(figure, said) ? OTHER_FIGURE : JOINT)
                .orElse(1.0);
    }

    private static boolean isAlike(SpokenQuantity one, SpokenQuantity other) {
        return one.unit().map(unit -> unit.dimension()).equals(other.unit().map(unit -> unit.dimension()));
    }
}
