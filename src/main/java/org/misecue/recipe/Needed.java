package org.misecue.recipe;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads a regular expression for the letters that every match of it holds: one of "tin", "pan" for
 * {@code \b(?:tins?|pans?)\b}.
 */
final class Needed {

    /** More wordings than this are not written out. */
    private static final int MOST = 96;

    private static final String FIGURES = "0123456789";
    private static final Pattern ESCAPED = Pattern.compile("\\\\(.)");
    /** What makes a class more than the signs that stand in it; a hyphen at its end is one of them. */
    private static final Pattern RANGE = Pattern.compile("^\\^|&&|\\\\(?!d)[A-Za-z]|(?<!\\\\)\\[|(?<!\\\\)-(?!$)");

    /**
     * What is known of a piece of an expression.
     *
     * @param all everything it can match; empty where that is too much to tell
     * @param needed each match holds one of these; empty where nothing is known
     */
    private record Piece(Set<String> all, Set<String> needed) {

        private static final Set<String> NOTHING = Set.of("");

        static final Piece EMPTY = new Piece(NOTHING, Set.of());
        static final Piece ANYTHING = new Piece(Set.of(), Set.of());

        static Piece exactly(Set<String> all) {
            return all.size() > MOST ? new Piece(Set.of(), all) : new Piece(all, Set.of());
        }

        static Piece holding(Set<String> needed) {
            return new Piece(Set.of(), needed);
        }

        boolean isExact() {
            return !all.isEmpty();
        }

        /** What each match holds, however it is known. */
        Set<String> musts() {
            Set<String> musts = isExact() ? all : needed;
            return musts.contains("") ? Set.of() : musts;
        }
    }

    /** Pieces one behind the other: exact ones grow together, of the others the one that tells most is kept. */
    private static final class Sequence {

        private Piece run = Piece.EMPTY;
        private Set<String> best = Set.of();
        private boolean exact = true;

        void add(Piece next) {
            if (next.isExact() && (long) run.all.size() * next.all.size() <= MOST) {
                run = Piece.exactly(joined(run.all, next.all));
                return;
            }
            exact = false;
            keep(run.musts());
            keep(next.musts());
            run = next.isExact() ? next : Piece.EMPTY;
        }

        /** What stands beside the match, or may come more than once. */
        void cut() {
            exact = false;
            keep(run.musts());
            run = Piece.EMPTY;
        }

        void keep(Set<String> musts) {
            if (!musts.isEmpty() && WORTH.compare(musts, best) > 0) {
                best = musts;
            }
        }

        Piece whole() {
            if (exact && best.isEmpty()) {
                return run;
            }
            keep(run.musts());
            return Piece.holding(best);
        }

        private static Set<String> joined(Set<String> heads, Set<String> tails) {
            return heads.stream()
                    .flatMap(head -> tails.stream().map(tail -> head + tail))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
        }
    }

    /** These stand in every other sentence. */
    private static final Set<String> COMMON = Set.of("the", "and", "with", "for", "into", "all");

    /** Long words are rare ones, and few are asked for sooner than many. */
    private static final Comparator<Set<String>> WORTH = Comparator.<Set<String>>comparingInt(
                    set -> set.stream().mapToInt(Needed::rarity).min().orElse(0))
            .thenComparing(Comparator.<Set<String>>comparingInt(Set::size).reversed());

    private final String regex;
    private int at;
    /** Whether something was matched for certain before the place that is read. */
    private boolean begun;

    private boolean looksBack;

    private Needed(String regex) {
        this.regex = regex;
    }

    /** One of these stands in everything that the expression matches, in upper or lower case; empty where any text may do. */
    static List<String> in(String regex) {
        Set<String> musts = new Needed(regex).alternatives().musts();
        return musts.stream()
                .filter(must -> musts.stream().noneMatch(other -> !other.equals(must) && must.contains(other)))
                .sorted()
                .toList();
    }

    /** Whether every match begins with the text. */
    static boolean isAtStart(String regex) {
        return regex.startsWith("^") && isOneSequence(regex);
    }

    /** Whether every match begins where a word begins or ends. */
    static boolean isAtBoundary(String regex) {
        return (regex.startsWith("\\b") || regex.startsWith("(?<![\\p{L}\\d")) && isOneSequence(regex);
    }

    private static boolean isOneSequence(String regex) {
        Needed all = new Needed(regex);
        all.sequence();
        return all.at == regex.length();
    }

    private static int rarity(String word) {
        return COMMON.contains(word) ? 1 : Math.min(4, word.length());
    }

    private Piece alternatives() {
        Piece all = sequence();
        while (sees("|")) {
            at++;
            Piece other = sequence();
            if (all.isExact() && other.isExact()) {
                all = Piece.exactly(both(all.all, other.all));
            } else if (all.musts().isEmpty() || other.musts().isEmpty()) {
                all = Piece.ANYTHING;
            } else {
                all = Piece.holding(both(all.musts(), other.musts()));
            }
        }
        return all;
    }

    private static Set<String> both(Set<String> one, Set<String> other) {
        return Stream.concat(one.stream(), other.stream()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Whether a match may look at what stands before it. */
    static boolean looksBack(String regex) {
        Needed all = new Needed(regex);
        all.alternatives();
        return all.looksBack;
    }

    private Piece sequence() {
        Sequence sequence = new Sequence();
        boolean begunBefore = begun;
        while (at < regex.length() && !sees("|") && !sees(")")) {
            boolean beside = sees("(?=") || sees("(?<=");
            boolean begunHere = begun;
            looksBack |= sees("(?<=") && !begun;
            Piece piece = atom();
            begun = begunHere;
            int times = at;
            if (beside) {
                sequence.keep(piece.musts());
            } else if (skips("?")) {
                sequence.add(piece.isExact() ? Piece.exactly(both(piece.all, Piece.NOTHING)) : Piece.ANYTHING);
            } else if (skips("*") || skipsBraces("{0")) {
                sequence.add(Piece.ANYTHING);
            } else if (skips("+") || skipsBraces("{")) {
                sequence.add(piece);
                sequence.cut();
                begun |= !piece.musts().isEmpty();
            } else {
                sequence.add(piece);
                begun |= !piece.musts().isEmpty();
            }
            if (at > times && (sees("?") || sees("+"))) {
                at++;
            }
        }
        begun = begunBefore;
        return sequence.whole();
    }

    private Piece atom() {
        char sign = regex.charAt(at++);
        return switch (sign) {
            case '(' -> group();
            case '[' -> signs();
            case '\\' -> escaped();
            case '.' -> Piece.ANYTHING;
            case '^', '$' -> Piece.EMPTY;
            default -> letter(sign);
        };
    }

    private Piece group() {
        boolean not = sees("?!") || sees("?<!");
        for (String head : List.of("?:", "?=", "?!", "?<=", "?<!", "?>")) {
            if (skips(head)) {
                return closed(not);
            }
        }
        if (skips("?<")) {
            at = regex.indexOf('>', at) + 1;
        } else if (skips("?")) {
            at = regex.indexOf(')', at) + 1; // "(?i)"
            return Piece.EMPTY;
        }
        return closed(false);
    }

    private Piece closed(boolean not) {
        Piece inside = alternatives();
        at++;
        return not ? Piece.EMPTY : inside;
    }

    /** A class of a few signs is written out. */
    private Piece signs() {
        int start = at;
        for (int depth = 1; depth > 0; at++) {
            switch (regex.charAt(at)) {
                case '\\' -> at++;
                case '[' -> depth++;
                case ']' -> depth--;
                default -> {}
            }
        }
        String inside = ESCAPED.matcher(regex.substring(start, at - 1).replace("\\d", FIGURES))
                .replaceAll("$1");
        boolean plain = RANGE.matcher(regex.substring(start, at - 1))
                .results()
                .findAny()
                .isEmpty();
        return plain ? oneOf(inside) : Piece.ANYTHING;
    }

    private static Piece oneOf(String signs) {
        return Piece.exactly(
                signs.chars().mapToObj(Character::toString).collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    private Piece escaped() {
        char sign = regex.charAt(at++);
        return switch (sign) {
            case 'Q' -> {
                int end = regex.indexOf("\\E", at);
                String quoted = regex.substring(at, end);
                at = end + 2;
                yield Piece.exactly(Set.of(quoted));
            }
            case 'p', 'P' -> {
                at = regex.indexOf('}', at) + 1;
                yield Piece.ANYTHING;
            }
            case 'b', 'B' -> Piece.EMPTY;
            case 'd' -> oneOf(FIGURES);
            default -> Character.isLetterOrDigit(sign) ? Piece.ANYTHING : letter(sign);
        };
    }

    private static Piece letter(char sign) {
        return Piece.exactly(Set.of(String.valueOf(sign)));
    }

    private boolean sees(String signs) {
        return regex.startsWith(signs, at);
    }

    private boolean skips(String signs) {
        boolean here = sees(signs);
        at += here ? signs.length() : 0;
        return here;
    }

    private boolean skipsBraces(String head) {
        boolean here = sees(head);
        at = here ? regex.indexOf('}', at) + 1 : at;
        return here;
    }
}
