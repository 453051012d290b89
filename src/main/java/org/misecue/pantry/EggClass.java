package org.misecue.pantry;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The weight classes of eggs in their shell, in the EU and the UK: Regulation (EU) 2023/2465, unchanged from 589/2008,
 * as summarised by EUR-Lex. Other countries sell other sizes under the same words.
 */
public enum EggClass {
    SMALL("S", "small", 0, 53),
    MEDIUM("M", "medium", 53, 63),
    LARGE("L", "large", 63, 73),
    VERY_LARGE("XL", "very large", 73, Integer.MAX_VALUE);

    private final String mark;
    private final String words;
    private final int fromGrams;
    private final int belowGrams;

    EggClass(String mark, String words, int fromGrams, int belowGrams) {
        this.mark = mark;
        this.words = words;
        this.fromGrams = fromGrams;
        this.belowGrams = belowGrams;
    }

    /** The class of an egg by its weight in the shell, in grams above zero. */
    public static EggClass weighing(int grams) {
        return Arrays.stream(values())
                .filter(size -> grams < size.belowGrams)
                .findFirst()
                .orElse(VERY_LARGE);
    }

    /** The class that a word on a recipe line names: "large", "XL". */
    public static Optional<EggClass> named(String word) {
        return Arrays.stream(values())
                .filter(size -> size.mark.equalsIgnoreCase(word) || size.words.equalsIgnoreCase(word))
                .findFirst();
    }

    /** The letters on the box. */
    public String mark() {
        return mark;
    }

    public String words() {
        return words;
    }

    /** The least weight in the shell, in grams; 0 for small. */
    public int fromGrams() {
        return fromGrams;
    }

    /** The weight in the shell that it stays below, in grams; empty for very large. */
    public OptionalInt belowGrams() {
        return this == VERY_LARGE ? OptionalInt.empty() : OptionalInt.of(belowGrams);
    }
}
