package org.misecue.spoken;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.spoken.Phrases.Kind;

/** Amounts of bakes gone by that are told past the end of a clause, and amounts that came to nothing. */
final class Bygones implements Asides.AsideRule {

    private static final int WASTED_REACH = 5;
    private static final int STORY_REACH = 18;
    private static final int OPENER = 4;
    private static final int SECOND_REACH = 6;
    private static final Set<String> LOST =
            Words.set("was were went fell dropped threw lost tipped poured throw thrown");
    private static final Set<String> THROWN = Set.of("throw", "threw", "thrown");
    private static final Set<String> POINTERS = Set.of("that", "it", "there", "i", "we");
    private static final Set<String> PAST = Words.set("was were came needed had made used took did");
    private static final Set<String> LOOSE = Set.of("to", "over", "about", "nearly", "like");
    private static final Set<String> SPEAKER = Set.of("i", "we");
    private static final Set<String> THESE = Words.set("this that it these those them one two for");
    private static final Set<String> DOING = Set.of("do", "make", "bake");
    private static final Set<String> BAKED = Set.of("made", "baked", "cooked");
    private static final Set<String> OCCASIONS = Words.set(
            "fair fete wedding party school church market cafe café shop restaurant bazaar christening funeral picnic sale reunion birthday club");
    private static final Set<String> BACK =
            Words.set("today today's here now me mine ours us this right okay anyway tonight");
    private static final Set<String> BACK_HERE = Words.set("today today's here now tonight");
    private static final Set<String> PARTS = Set.of("this", "that", "each", "one");

    private final WordStream words;
    private final Phrases phrases;

    Bygones(WordStream words, Phrases phrases) {
        this.words = words;
        this.phrases = phrases;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.BYGONES;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        if (isWasted(said)) {
            return Optional.of(Aside.of(Aside.Kind.OTHER_TIME, "wasted, not used"));
        }
        if (isOccasionGoingOn(said.start()) || isOfOccasions(said.start())) {
            return Optional.of(Aside.of(Aside.Kind.OTHER_TIME, "another time"));
        }
        return isSplitOfOthers(said) ? Optional.of(Aside.SOMEBODY_ELSES) : Optional.empty();
    }

    /** "that was three hundred grams in the bin", "I had to throw away fifty grams". */
    private boolean isWasted(SpokenQuantity said) {
        boolean thrown = THROWN.contains(words.text(said.start() - 2))
                && Set.of("away", "out").contains(words.text(said.start() - 1));
        return thrown
                || (phrases.within(Kind.WASTED, said.end(), clauseEnd(said.end()))
                        && (words.saysAny(LOST, said.start() - WASTED_REACH, said.start())
                                || words.saysAny(LOST, said.end(), clauseEnd(said.end()))));
    }

    private int clauseEnd(int end) {
        int at = end;
        while (at < end + 2 * WASTED_REACH && !words.border(at)) {
            at++;
        }
        return at;
    }

    /** "when I made it for the school I doubled it, so that was four cups": the past goes on behind the "so". */
    private boolean isOccasionGoingOn(int start) {
        int from = pastFrom(start);
        OptionalInt opened = from < start ? opened(from) : OptionalInt.empty();
        return opened.isPresent() && !words.saysAny(BACK, opened.getAsInt() + OPENER, start);
    }

    /** "when I do this for church I make three pans of it and that's six sticks". */
    private boolean isOfOccasions(int start) {
        if (!words.text(start - 1).equals("is") || !POINTERS.contains(words.text(start - 2))) {
            return false;
        }
        for (int at = start - STORY_REACH; at < start; at++) {
            boolean doing = words.text(at).equals("when")
                    && SPEAKER.contains(words.text(at + 1))
                    && DOING.contains(words.text(at + 2));
            if (doing && isForOccasion(at + 3, at + 3 + SECOND_REACH)) {
                return !words.saysAny(BACK_HERE, at + OPENER, start);
            }
        }
        return false;
    }

    private boolean isForOccasion(int from, int to) {
        for (int at = from; at < to; at++) {
            if (words.text(at).equals("for")
                    && (OCCASIONS.contains(words.text(at + 1)) || OCCASIONS.contains(words.text(at + 2)))) {
                return true;
            }
        }
        return false;
    }

    /** Where "that was", "it came to", "I needed" begins right before the index; the index where it doesn't. */
    private int pastFrom(int start) {
        int at = LOOSE.contains(words.text(start - 1)) ? start - 2 : start - 1;
        boolean past = PAST.contains(words.text(at)) && POINTERS.contains(words.text(at - 1));
        return past ? at - 1 : start;
    }

    /** Where the story of another time begins. */
    private OptionalInt opened(int until) {
        OptionalInt told = phrases.lastWithin(Kind.OTHER_TIME, until - STORY_REACH, until);
        for (int at = until - 1; at > until - STORY_REACH && told.isEmpty(); at--) {
            told = isOpener(at, until) ? OptionalInt.of(at) : told;
        }
        return told;
    }

    /** "when I did this", "for the summer fair I doubled it". */
    private boolean isOpener(int at, int until) {
        boolean did = words.text(at + 2).equals("did");
        boolean done = words.text(at).equals("when")
                && SPEAKER.contains(words.text(at + 1))
                && (BAKED.contains(words.text(at + 2)) || (did && THESE.contains(words.text(at + 3))));
        boolean led = Set.of("for", "at").contains(words.text(at))
                && (OCCASIONS.contains(words.text(at + 2)) || OCCASIONS.contains(words.text(at + 3)));
        return done || (led && (isDoneWithin(at, until) || isDoneAtOnce(at, until)));
    }

    /** "for the wedding we did", not "for the party on Sunday, and I needed". */
    private boolean isDoneAtOnce(int at, int until) {
        boolean twoWords = OCCASIONS.contains(words.text(at + 3));
        return until == (twoWords ? at + 4 : at + 3) && SPEAKER.contains(words.text(until));
    }

    private boolean isDoneWithin(int from, int to) {
        for (int at = from; at < to - 1; at++) {
            String next = words.text(at + 1);
            if (SPEAKER.contains(words.text(at))
                    && (BAKED.contains(next) || PAST.contains(next) || next.endsWith("ed"))) {
                return true;
            }
        }
        return false;
    }

    /** "my sister does half and half, so one twenty five of this and one twenty five of that". */
    private boolean isSplitOfOthers(SpokenQuantity said) {
        boolean part = isPart(said.end())
                && (words.normal(said.start() - STORY_REACH, said.start()).contains("half")
                        || isPartWithin(said.start() - SECOND_REACH, said.start())
                        || isPartWithin(said.end() + 1, said.end() + 2 * SECOND_REACH));
        OptionalInt person = phrases.lastWithin(Kind.OTHER_PEOPLE, said.start() - STORY_REACH, said.start());
        return part && person.isPresent() && !isOurs(person.getAsInt() + 1, said.start());
    }

    private boolean isPart(int end) {
        return words.text(end).equals("of") && PARTS.contains(words.text(end + 1));
    }

    private boolean isPartWithin(int from, int to) {
        for (int end = from; end < to; end++) {
            if (isPart(end)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the talk comes back to the speaker's own bake. */
    private boolean isOurs(int from, int to) {
        for (int at = from; at < to; at++) {
            String word = words.text(at);
            boolean ours = SPEAKER.contains(word) || word.startsWith("i'") || BACK.contains(word);
            if (ours && !isOfThis(at)) {
                return true;
            }
        }
        return false;
    }

    /** The pointer of a part is no way back: "… of this, … of that". */
    private boolean isOfThis(int at) {
        return words.text(at).equals("this") && words.text(at - 1).equals("of");
    }
}
