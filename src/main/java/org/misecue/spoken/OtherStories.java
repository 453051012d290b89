package org.misecue.spoken;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Amounts of other times and other people, of what viewers could do instead, denied ones and ones only thought of. */
final class OtherStories implements Asides.AsideRule {

    /** Words behind which another story begins, or this one goes on. */
    private static final Set<String> TURNS = Set.of(
            "but", "anyway", "so", "right", "okay", "here", "today", "anyhow", "however", "although", "though", "next");

    private static final Set<String> SUBJECTS =
            Set.of("i", "we", "you", "he", "she", "they", "it", "my", "the", "there");

    private static final Set<String> DOING = Words.set(
            "puts put does did do makes made uses used adds added has had takes took likes liked swore swears always "
                    + "reckons say says said tell wrote cuts gives calls bakes baked eats ate");
    private static final Set<String> DO_SO = Words.set("take use do put go you then just add try that's it's");
    private static final Set<String> OPENING = Set.of("now", "next", "then", "right", "okay");
    private static final Set<String> FIRST_PERSON = Set.of("i", "i'm", "i've", "we", "we're", "we've");
    private static final Set<String> HERE = Set.of("it", "that", "there");
    private static final Set<String> SUBORDINATE =
            Set.of("if", "that", "what", "when", "as", "like", "because", "which");
    private static final Set<String> TELLING = Words.set("use add put take go give try do make throw pop");
    private static final Set<String> OBJECTS = Set.of("it", "them", "in", "for", "to");
    private static final Set<String> THIRD_PERSON = Set.of("puts", "uses", "adds", "swears", "reckons");
    private static final Set<String> THINGS = Words.set("it that this which recipe cake one sheet mix batter what and");

    /** How far a story reaches without a border. From listening; no source. */
    private static final int CLAUSE = 11;

    /** A condition reaches further: "if it has to be tinned that's sweetened so take seventy grams". */
    private static final int CONDITION = 26;

    private static final int IF_REACH = 12;
    private static final int DOES_REACH = 8;
    private static final int THOUGHT = 5;
    private static final int NEXT_AT_ONCE = 3;
    private static final int TOLD_BEHIND = 7;

    private final WordStream words;
    private final Phrases phrases;
    private final Set<Integer> newTopics = new HashSet<>();
    private int lastToldEnd;

    OtherStories(WordStream words, Phrases phrases, List<NameHit> names) {
        this.words = words;
        this.phrases = phrases;
        for (NameHit name : names) {
            boolean opens = OPENING.contains(words.text(name.end())) || OPENING.contains(words.text(name.start() - 1));
            if (name.inRecipe() && opens) {
                newTopics.add(name.start());
            }
        }
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        Optional<Aside> aside = told(said);
        if (aside.isPresent()) {
            lastToldEnd = said.end();
        }
        return aside;
    }

    private Optional<Aside> told(SpokenQuantity said) {
        if (phrases.endsBefore(Kind.DENIES, said.start())) {
            return aside(Aside.Kind.DENIED, "denied: " + words.normal(said.start() - 1, said.end()));
        }
        int from = clauseStart(said.start(), CLAUSE);
        if (phrases.within(Kind.THOUGHT, Math.max(from, said.start() - THOUGHT), said.start())) {
            return aside(Aside.Kind.THOUGHT, "only thought of");
        }
        if (phrases.within(Kind.ELSEWHERE, from, said.start())
                || someoneDoes(from, said.start())
                || somebodyElseDoes(from, said.start())) {
            return aside(Aside.Kind.OTHER_PEOPLE, "what somebody else does");
        }
        if (isToldBefore(from, said.start()) || tellsOtherTime(said.end())) {
            return aside(Aside.Kind.OTHER_TIME, "another time");
        }
        return alternative(said);
    }

    /** "my sister … puts three in": a person, and what she does within a few words. */
    private boolean someoneDoes(int from, int to) {
        OptionalInt person = phrases.lastWithin(Kind.OTHER_PEOPLE, from, to);
        if (person.isEmpty()) {
            return false;
        }
        return words.saysAny(DOING, person.getAsInt() + 1, Math.min(to, person.getAsInt() + DOES_REACH));
    }

    /** A phrase right behind another amount tells of that one: "two fifty's the old way". */
    private boolean isToldBefore(int from, int to) {
        OptionalInt told = phrases.lastWithin(Kind.OTHER_TIME, from, to);
        if (told.isEmpty() || isExcuse(told.getAsInt())) {
            return false;
        }
        String before = words.text(told.getAsInt() - 1);
        boolean copula = before.equals("is") || before.equals("was");
        return !copula || new NumberGrammar(words).at(told.getAsInt() - 2).isEmpty();
    }

    /** "Aunt … puts four in", "the neighbour uses two": what one says of oneself has no such ending. */
    private boolean somebodyElseDoes(int from, int to) {
        for (int at = from + 1; at < to; at++) {
            if (THIRD_PERSON.contains(words.text(at)) && !THINGS.contains(words.text(at - 1))) {
                return true;
            }
        }
        return false;
    }

    private Optional<Aside> alternative(SpokenQuantity said) {
        int from = clauseStart(said.start(), CLAUSE);
        boolean viewer =
                phrases.within(Kind.VIEWER, from, said.start()) || phrases.within(Kind.MINE, from, said.start());
        OptionalInt offer = phrases.lastWithin(Kind.ALTERNATIVE, from, said.start());
        boolean offered = offer.isPresent() && !isInsteadOf(offer.getAsInt());
        if (offered && !viewer) {
            return aside(Aside.Kind.ALTERNATIVE, "an alternative for viewers");
        }
        if (isWhatIWouldDo(said)) {
            return aside(Aside.Kind.ALTERNATIVE, "an alternative for viewers");
        }
        int start = conditionStart(said.start());
        OptionalInt condition = phrases.lastWithin(Kind.CONDITION, start, said.start());
        if (condition.isEmpty() && isAmount(said) && isToldTo(said.start())) {
            condition = lastIf(Math.max(start, said.start() - IF_REACH), said.start());
        }
        if (condition.isPresent() && !phrases.within(Kind.VIEWER, condition.getAsInt(), said.start())) {
            return aside(Aside.Kind.ALTERNATIVE, "an alternative for viewers");
        }
        boolean instead = phrases.endAt(Kind.ALTERNATIVE, said.end()).isPresent()
                && words.text(said.end()).equals("instead");
        return instead ? aside(Aside.Kind.ALTERNATIVE, "an alternative for viewers") : Optional.empty();
    }

    /** "oil goes in instead of butter" is done, not offered. */
    private boolean isInsteadOf(int at) {
        return words.text(at).equals("instead") && words.text(at + 1).equals("of");
    }

    /** Ovens and times are told by conditions of their own. */
    private static boolean isAmount(SpokenQuantity said) {
        return said.manner() != Manner.HEAT
                && said.unit()
                        .filter(unit -> unit.dimension() == Dimension.DURATION)
                        .isEmpty();
    }

    /** "use three", "put in twenty". */
    private boolean isToldTo(int start) {
        return TELLING.contains(words.text(start - 1))
                || (TELLING.contains(words.text(start - 2)) && OBJECTS.contains(words.text(start - 1)));
    }

    private OptionalInt lastIf(int from, int to) {
        for (int at = to - 1; at >= from; at--) {
            if (words.text(at).equals("if")) {
                return OptionalInt.of(at);
            }
        }
        return OptionalInt.empty();
    }

    /** "Could you use yoghurt? You could. I'd do three quarters of a cup": told of what was asked before. */
    private boolean isWhatIWouldDo(SpokenQuantity said) {
        return phrases.within(Kind.WOULD, said.start() - 5, said.start())
                && (phrases.within(Kind.ALTERNATIVE, said.start() - CONDITION, said.start())
                        || phrases.within(Kind.CONDITION, said.start() - CONDITION, said.start()));
    }

    /** A "so" goes on with a condition. */
    private int conditionStart(int index) {
        int at = index;
        while (at > 0
                && index - at < CONDITION
                && !words.border(at)
                && !isWhatIDo(at)
                && !newTopics.contains(at)
                && ((words.text(at).equals("so") && DO_SO.contains(words.text(at + 1)))
                        || !TURNS.contains(words.text(at)))) {
            at--;
        }
        return at;
    }

    /** "if you don't have that use juice, I'm putting in five": what the speaker does is no condition. */
    private boolean isWhatIDo(int at) {
        boolean thereIs = words.text(at).equals("there") && words.text(at + 1).equals("is");
        return (thereIs || FIRST_PERSON.contains(words.text(at))) && !SUBORDINATE.contains(words.text(at - 1));
    }

    /** A story goes on to its next amount only at once. */
    private int clauseStart(int index, int reach) {
        int at = index - 1;
        int over = lastToldEnd > 0 && index - lastToldEnd > NEXT_AT_ONCE ? lastToldEnd : 0;
        while (at > over
                && at > 0
                && index - at < reach
                && !words.border(at)
                && !newTopics.contains(at)
                && !TURNS.contains(words.text(at))
                && !isBackHere(at)) {
            at--;
        }
        return Math.max(0, at);
    }

    /** "my mother used whatever there was and it's eighty five grams", "… and I put two": the story is over. */
    private boolean isBackHere(int at) {
        boolean here = FIRST_PERSON.contains(words.text(at + 1))
                || (HERE.contains(words.text(at + 1)) && words.text(at + 2).equals("is"));
        return words.text(at).equals("and") && here;
    }

    /** "two fifty is the old way", right behind the amount; "…, last week I did two hundred" is told of the next one. */
    private boolean tellsOtherTime(int end) {
        boolean copula = words.text(end).equals("is") || words.text(end).equals("was");
        if (copula && phrases.endAt(Kind.OTHER_TIME, end + 1).isPresent()) {
            return true;
        }
        for (int at = end; at < end + TOLD_BEHIND && (at == end || !words.border(at)); at++) {
            boolean joint = TURNS.contains(words.text(at)) || words.text(at).equals("and");
            if (joint && (at > end || SUBJECTS.contains(words.text(at + 1)))) {
                return false;
            }
            OptionalInt told = phrases.endAt(Kind.OTHER_TIME, at);
            if (told.isPresent()) {
                return !isExcuse(at) && !SUBJECTS.contains(words.text(told.getAsInt()));
            }
        }
        return false;
    }

    /** "I'm reading last week's sheet" tells why the number before was wrong. */
    private boolean isExcuse(int at) {
        String before = words.text(at - 1);
        return before.equals("reading")
                || before.equals("read")
                || words.normal(at - 2, at).equals("looking at");
    }

    private static Optional<Aside> aside(Aside.Kind kind, String reason) {
        return Optional.of(Aside.of(kind, reason));
    }
}
