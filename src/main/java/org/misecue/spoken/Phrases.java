package org.misecue.spoken;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** The phrases of {@code phrases.txt}, found around an index of the stream. */
public final class Phrases {

    /** The kinds of phrase, each a heading in the file. */
    public enum Kind {
        HEDGE_BEFORE,
        HEDGE_AFTER,
        REPAIR,
        LATE_REPAIR,
        ADDS,
        DENIES,
        OTHER_TIME,
        OTHER_PEOPLE,
        ELSEWHERE,
        ALTERNATIVE,
        VIEWER,
        MINE,
        DOUBLE,
        TRIPLE,
        HALF_BATCH,
        NOT_DOUBLED,
        DRINKS,
        THOUGHT,
        CONDITION,
        WOULD,
        KEPT,
        ON_THE_SCALES,
        NOT_USED,
        WEIGHS,
        NOT_WRITTEN,
        TOTAL_BEFORE,
        TOTAL_AFTER,
        WHOLE_BEFORE,
        WHOLE_AFTER,
        NOT_ALL,
        NO_REPAIR,
        FOR_BAKING,
        FOR_PROVING,
        FOR_COVERING,
        FOR_CHILLING,
        FOR_RESTING,
        FOR_COOLING,
        FOR_LEAVING,
        FOR_COOKING,
        FOR_SIMMERING,
        FOR_SOAKING,
        FOR_TOASTING,
        FOR_WORKING,
        FOR_ELSEWHERE,
        PASSING_TIME_BEFORE,
        PASSING_TIME_AFTER,
        PER_SIDE,
        FIRST_PART,
        LOOKS,
        IF_NEEDED,
        OFFERED,
        SUGGESTED,
        LATER_ONE,
        MORE_OF_IT,
        WRITTEN_BATCH,
        TURNED,
        OF_THE_OVEN,
        OF_OTHER_HEAT,
        OF_SLIGHT_HEAT,
        OF_A_TIN,
        OF_ANOTHER_LENGTH,
        MAKES,
        ASKS_HOW_MANY,
        OTHER_OCCASION,
        NEGATES,
        OF_ANOTHER_SIDE,
        IN_ALL,
        AS_MANY_AS_MADE,
        PRESCRIBED,
        CITES,
        STOCK,
        SCALES_READ,
        WASTED,
        ON_THE_SHEET,
        BY_HAND,
        IT_GETS,
        FOR_THE_BOARD,
        SEASON,
        LARGE_SPOON,
        REMAINDER,
        HOLDS_BACK,
        FIRST_PORTION,
        OTHERS_MEASURE,
        FILLER
    }

    private static final Map<Kind, Map<String, List<List<String>>>> TABLE = load();

    /** No phrase of the file has more words. */
    private static final int LONGEST = 8;

    private final WordStream words;

    public Phrases(WordStream words) {
        this.words = words;
    }

    /** Where a phrase of the kind that begins at the index ends; empty if none begins there. */
    public OptionalInt endAt(Kind kind, int start) {
        for (List<String> phrase : TABLE.getOrDefault(kind, Map.of()).getOrDefault(words.text(start), List.of())) {
            if (matches(phrase, start)) {
                return OptionalInt.of(start + phrase.size());
            }
        }
        return OptionalInt.empty();
    }

    /** Whether a phrase of the kind ends right before the index, fillers between allowed. */
    public boolean endsBefore(Kind kind, int index) {
        int at = index;
        for (int skipped = 0; skipped < 4; skipped++) {
            if (endsAt(kind, at)) {
                return true;
            }
            if (endAt(Kind.FILLER, at - 1).isEmpty()) {
                return false;
            }
            at--;
        }
        return false;
    }

    private boolean endsAt(Kind kind, int end) {
        for (int start = Math.max(0, end - LONGEST); start < end; start++) {
            for (List<String> phrase : TABLE.getOrDefault(kind, Map.of()).getOrDefault(words.text(start), List.of())) {
                if (start + phrase.size() == end && matches(phrase, start)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The start of the last phrase of the kind that lies wholly in {@code [from, to)}; empty if none does. */
    public OptionalInt lastWithin(Kind kind, int from, int to) {
        for (int at = to - 1; at >= Math.max(0, from); at--) {
            OptionalInt end = endAt(kind, at);
            if (end.isPresent() && end.getAsInt() <= to) {
                return OptionalInt.of(at);
            }
        }
        return OptionalInt.empty();
    }

    public boolean within(Kind kind, int from, int to) {
        return lastWithin(kind, from, to).isPresent();
    }

    private boolean matches(List<String> phrase, int start) {
        if (start < 0) {
            return false;
        }
        for (int i = 0; i < phrase.size(); i++) {
            if (!phrase.get(i).equals(words.text(start + i))) {
                return false;
            }
        }
        return true;
    }

    /** By kind and first word, longer phrases first. */
    private static Map<Kind, Map<String, List<List<String>>>> load() {
        Map<Kind, Map<String, List<List<String>>>> table = new EnumMap<>(Kind.class);
        Kind kind = Kind.FILLER;
        for (String line : lines()) {
            if (line.startsWith("[")) {
                kind = Kind.valueOf(line.substring(1, line.length() - 1)
                        .toUpperCase(Locale.ROOT)
                        .replace(' ', '_'));
            } else if (!line.isBlank() && !line.startsWith("#")) {
                Map<String, List<List<String>>> byFirst = table.computeIfAbsent(kind, k -> new HashMap<>());
                variants(line).map(Phrases::tokens).forEach(phrase -> byFirst.computeIfAbsent(
                                phrase.get(0), k -> new ArrayList<>())
                        .add(phrase));
            }
        }
        table.values().forEach(byFirst -> byFirst.values()
                .forEach(list ->
                        list.sort(Comparator.comparing(List<String>::size).reversed())));
        return table;
    }

    /** "not|isn't on the card|sheet": one phrase for each choice of words. */
    private static Stream<String> variants(String line) {
        Stream<String> begun = Stream.of("");
        for (String choice : line.strip().split(" ", -1)) {
            begun = begun.flatMap(words -> Stream.of(choice.split("\\|", -1)).map(word -> words + " " + word));
        }
        return begun;
    }

    /** Phrases are read by the stream's own rules, so that "that's" is the same in both. */
    private static List<String> tokens(String phrase) {
        return java.util.Arrays.stream(phrase.strip().split(" "))
                .flatMap(word -> Tokens.split(word).texts().stream())
                .toList();
    }

    private static List<String> lines() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                java.util.Objects.requireNonNull(Phrases.class.getResourceAsStream("phrases.txt")),
                StandardCharsets.UTF_8))) {
            return in.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("phrases.txt cannot be read", e);
        }
    }
}
