package org.misecue.spoken;

import java.util.Set;

/**
 * An adjective alone stands for its ingredient where it is measured ("seventy five grams of granulated") or where its kind
 * was just spoken of ("rye flour … and the white one").
 */
final class LoneAdjectives {

    private static final int REACH = 15;
    private static final Set<String> BEHIND = Set.of("one", "ones", "that", "is");
    private static final Set<String> PRONOUNS = Set.of("it", "that", "them");

    private final WordStream words;
    private final RecipeNames recipe;
    private int lastEnd;
    private Set<Integer> lastLines = Set.of();

    LoneAdjectives(WordStream words, RecipeNames recipe) {
        this.words = words;
        this.recipe = recipe;
    }

    /** Notes what was named last; names come in the order of the stream. */
    void named(NameHit name) {
        lastEnd = name.end();
        lastLines = name.lines();
    }

    /** Whether the adjective at the index, which only these lines have, means them. */
    boolean mean(int at, Set<Integer> lines) {
        return words.on(Mechanism.LONE_ADJECTIVES) && (isMeasured(at) || (isOf(at) && isKin(lines)));
    }

    /** "seventy five grams of granulated", "a hundred is wholemeal". */
    private boolean isMeasured(int at) {
        boolean joined = words.text(at - 1).equals("of") || words.text(at - 1).equals("is");
        boolean ofIt = words.text(at - 1).equals("is")
                && PRONOUNS.contains(words.text(at - 2))
                && words.text(at - 3).equals("of");
        boolean measured = UnitWords.at(words, at - 2).isPresent() || NumberWords.isOne(words.text(at - 2));
        return ofIt || (joined && measured);
    }

    /** "fifty grams of plain", "the plain one", "the plain is". */
    private boolean isOf(int at) {
        String before = words.text(at - 1);
        boolean theOne = before.equals("the")
                && (BEHIND.contains(words.text(at + 1)) || beginsNumber(at + 1))
                && at - lastEnd <= REACH;
        return before.equals("of")
                || theOne
                || (before.equals("the") && words.text(at - 2).equals("of"));
    }

    private boolean beginsNumber(int at) {
        return NumberWords.isOne(words.text(at))
                || (words.text(at).equals("a") && NumberWords.isOne(words.text(at + 1)));
    }

    /** "rye flour … and the white": of what was named last, or another sort of it. */
    private boolean isKin(Set<Integer> lines) {
        return lastLines.containsAll(lines)
                || lines.stream().allMatch(line -> lastLines.stream().anyMatch(last -> recipe.areKin(line, last)));
    }
}
