package org.misecue.spoken;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.spoken.Phrases.Kind;

/** "last week I did two hundred", "two fifty is the old way": amounts of other days. */
final class OtherTimes implements Asides.AsideRule {

    private static final Set<String> SUBJECTS =
            Set.of("i", "we", "you", "he", "she", "they", "it", "my", "the", "there");
    private static final Set<String> COPULAS = Set.of("is", "was");
    private static final Set<String> SPEAKER = Set.of("i", "i've", "we", "we've");
    private static final Set<String> THINGS = Set.of("this", "it", "these");
    private static final Set<String> TELLS = Set.of("be", "say", "put", "use", "do", "take", "add");
    private static final Set<String> READING = Set.of("reading", "read");
    private static final int TOLD_BEHIND = 7;

    private final WordStream words;
    private final Phrases phrases;
    private final Story story;

    OtherTimes(WordStream words, Phrases phrases, Story story) {
        this.words = words;
        this.phrases = phrases;
        this.story = story;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.OTHER_TIMES;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        return isToldBefore(story.clauseStart(said.start()), said.start()) || isToldBehind(said.end())
                ? Optional.of(Aside.of(Aside.Kind.OTHER_TIME, "another time"))
                : Optional.empty();
    }

    /** A phrase right behind another amount tells of that one: "two fifty's the old way". */
    private boolean isToldBefore(int from, int to) {
        OptionalInt told = phrases.lastWithin(Kind.OTHER_TIME, from, to);
        if (told.isEmpty() || isExcuse(told.getAsInt()) || isSince(told.getAsInt())) {
            return false;
        }
        boolean copula = COPULAS.contains(words.text(told.getAsInt() - 1));
        return !copula || new NumberGrammar(words).at(told.getAsInt() - 2).isEmpty();
    }

    /** "two fifty is the old way", right behind the amount; "…, last week I did two hundred" is told of the next one. */
    private boolean isToldBehind(int end) {
        if (COPULAS.contains(words.text(end))
                && phrases.endAt(Kind.OTHER_TIME, end + 1).isPresent()) {
            return true;
        }
        if (words.normal(end, end + 2).equals("is when")) {
            return true; // "a cup is when I do the big tray"
        }
        if (words.text(end).equals("yesterday")) {
            return true;
        }
        for (int at = end; at < end + TOLD_BEHIND && (at == end || !words.border(at)); at++) {
            boolean joint = Story.isTurn(words.text(at)) || words.text(at).equals("and");
            if (joint && (at > end || SUBJECTS.contains(words.text(at + 1)))) {
                return false;
            }
            if (at > end
                    && !words.text(at).equals("one")
                    && new NumberGrammar(words).at(at).isPresent()) {
                return false;
            }
            if (words.text(at).equals("yes")
                    || phrases.endAt(Kind.OTHER_PEOPLE, at).isPresent()) {
                return false; // "two spoons. My mother used to add more": somebody else begins
            }
            OptionalInt told = phrases.endAt(Kind.OTHER_TIME, at);
            if (told.isPresent()) {
                return !isExcuse(at)
                        && !isWhatItIs(at)
                        && !SPEAKER.contains(words.text(at))
                        && !SUBJECTS.contains(words.text(told.getAsInt()))
                        && !isToldOfNext(told.getAsInt());
            }
        }
        return false;
    }

    /** "three tablespoons. It used to be two", "forty grams. Gran used to say one heaped spoon". */
    private boolean isToldOfNext(int end) {
        return TELLS.contains(words.text(end))
                && new NumberGrammar(words).at(end + 1).isPresent();
    }

    /** "two tablespoons of jam, this is last summer's": the jam is, the amount is not. */
    private boolean isWhatItIs(int at) {
        return words.text(at - 1).equals("is") && THINGS.contains(words.text(at - 2));
    }

    /** "since last winter I take" is told of now. */
    private boolean isSince(int at) {
        return words.text(at - 1).equals("since");
    }

    /** "I'm reading last week's sheet" tells why the number before was wrong. */
    private boolean isExcuse(int at) {
        return READING.contains(words.text(at - 1)) || words.normal(at - 2, at).equals("looking at");
    }
}
