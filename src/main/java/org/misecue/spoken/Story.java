package org.misecue.spoken;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How far back what is told of an amount may begin: a walk over the words before it, until the talk turns. */
final class Story {

    /** How far a story reaches without a border. From listening; no source. */
    static final int CLAUSE = 11;

    /** A condition reaches further: "if it has to be tinned that's sweetened so take seventy grams". */
    static final int CONDITION = 26;

    private static final int NEXT_AT_ONCE = 3;

    /** Words behind which another story begins, or this one goes on. */
    private static final Set<String> TURNS = Set.of(
            "but", "anyway", "so", "right", "okay", "here", "today", "anyhow", "however", "although", "though", "next");

    private static final Set<String> DO_SO = Words.set("take use do put go you then just add try that's it's");
    private static final Set<String> OPENING = Set.of("now", "next", "then", "right", "okay");
    private static final Set<String> FIRST_PERSON = Set.of("i", "i'm", "i've", "we", "we're", "we've");
    private static final Set<String> SPEAKER = Set.of("i", "i'm", "i've", "i'll");
    private static final Set<String> HERE = Set.of("it", "that", "there");
    private static final Set<String> THEIR_DOING = Set.of("does", "did", "puts", "likes", "wants", "always", "says");
    private static final Set<String> SUBORDINATE =
            Set.of("if", "that", "what", "when", "as", "like", "because", "which");

    private final WordStream words;
    private final Set<Integer> newTopics = new HashSet<>();
    private int lastToldEnd;

    Story(WordStream words, List<NameHit> names) {
        this.words = words;
        for (NameHit name : names) {
            boolean opens = OPENING.contains(words.text(name.end())) || OPENING.contains(words.text(name.start() - 1));
            if (name.inRecipe() && opens) {
                newTopics.add(name.start());
            }
        }
    }

    /** Notes an amount of the story, which goes on to its next amount only at once. */
    void told(SpokenQuantity said) {
        lastToldEnd = said.end();
    }

    /** Whether the word turns the talk. */
    static boolean isTurn(String word) {
        return TURNS.contains(word);
    }

    /** Where the clause begins that ends before the index. */
    int clauseStart(int index) {
        if (words.wall(index)) {
            return index;
        }
        int at = index - 1;
        int over = lastToldEnd > 0 && (index - lastToldEnd > NEXT_AT_ONCE || isMine(index)) ? lastToldEnd : 0;
        while (at > over
                && index - at < CLAUSE
                && !words.border(at)
                && !newTopics.contains(at)
                && (!isTurn(words.text(at)) || isPersonHere(at))
                && !isBackHere(at)
                && !isNowMine(at)
                && !isDismissed(at)) {
            at--;
        }
        return Math.max(0, at);
    }

    /** "on the packet they tell you two hundred, I put one twenty". */
    private boolean isMine(int index) {
        return words.saysAny(SPEAKER, lastToldEnd, index);
    }

    /** "my mother used whatever there was and it's eighty five grams", "… and I put two": the story is over. */
    private boolean isBackHere(int at) {
        boolean here = FIRST_PERSON.contains(words.text(at + 1))
                || (HERE.contains(words.text(at + 1)) && words.text(at + 2).equals("is"));
        return words.text(at).equals("and") && here;
    }

    /** "… it used to be, now I put three". */
    private boolean isNowMine(int at) {
        return words.text(at).equals("now") && SPEAKER.contains(words.text(at + 1));
    }

    /** "my producer here does put more": no turn of the talk. */
    private boolean isPersonHere(int at) {
        return words.text(at).equals("here") && THEIR_DOING.contains(words.text(at + 1));
    }

    /** "don't mind her": what she does is over. */
    private boolean isDismissed(int at) {
        return words.text(at).equals("mind") && Set.of("don't", "never").contains(words.text(at - 1));
    }

    /** Where a condition may begin that governs the index; a "so" goes on with it. */
    int conditionStart(int index) {
        int at = index;
        while (at > 0
                && index - at < CONDITION
                && !words.border(at)
                && !isWhatIDo(at)
                && !newTopics.contains(at)
                && (isSo(at) || !isTurn(words.text(at)))) {
            at--;
        }
        return at;
    }

    private boolean isSo(int at) {
        return words.text(at).equals("so") && DO_SO.contains(words.text(at + 1));
    }

    /** "if you don't have that use juice, I'm putting in five": what the speaker does is no condition. */
    private boolean isWhatIDo(int at) {
        boolean thereIs = words.text(at).equals("there") && words.text(at + 1).equals("is");
        return (thereIs || FIRST_PERSON.contains(words.text(at))) && !SUBORDINATE.contains(words.text(at - 1));
    }
}
