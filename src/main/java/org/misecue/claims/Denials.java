package org.misecue.claims;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.misecue.pantry.Allergen;
import org.misecue.recipe.TableFile;
import org.misecue.spoken.WordStream;

/** The rows of {@code denials.csv}, found at an index of a stream. Read on first use. */
final class Denials {

    /** A row whose words stand in {@code [start, end)} of the stream. */
    record Term(int start, int end, Denial denial, boolean doubtful) {}

    private Denials() {}

    static List<Denial> all() {
        return Table.ROWS;
    }

    /** "gluten", "tree nuts". */
    static Optional<Term> noun(WordStream words, int at) {
        return longest(words, at, Denial::nouns).or(() -> heard(words, at, Denial::nouns));
    }

    /** "vegan", "eggless". */
    static Optional<Term> alone(WordStream words, int at) {
        return longest(words, at, Denial::alone).or(() -> heard(words, at, Denial::alone));
    }

    /** "coeliacs", "vegans". */
    static Optional<Term> eaters(WordStream words, int at) {
        return longest(words, at, Denial::eaters);
    }

    private static Optional<Term> longest(WordStream words, int at, Function<Denial, List<List<String>>> kind) {
        return all().stream()
                .flatMap(row -> kind.apply(row).stream()
                        .filter(phrase -> stands(phrase, words, at))
                        .map(phrase -> new Term(at, at + phrase.size(), row, false)))
                .max(Comparator.comparingInt(Term::end));
    }

    /** A mishearing counts for the sort of word that the row begins with. */
    private static Optional<Term> heard(WordStream words, int at, Function<Denial, List<List<String>>> kind) {
        return longest(words, at, row -> isFirstOf(row, kind) ? row.heard() : List.of())
                .map(term -> new Term(term.start(), term.end(), term.denial(), true));
    }

    private static boolean isFirstOf(Denial row, Function<Denial, List<List<String>>> kind) {
        return kind.apply(row).equals(row.alone().isEmpty() ? row.nouns() : row.alone());
    }

    static boolean stands(List<String> phrase, WordStream words, int at) {
        for (int i = 0; i < phrase.size(); i++) {
            boolean inOneSentence = i == 0 || !words.wall(at + i);
            if (!inOneSentence || !words.text(at + i).equals(phrase.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static final class Table {
        static final List<Denial> ROWS = TableFile.rows(Denials.class, "denials.csv").stream()
                .map(Denials::row)
                .toList();
    }

    private static Denial row(String line) {
        List<String> cells = List.of(line.split(";", 9));
        if (cells.size() != 9) {
            throw new IllegalStateException("denials.csv: expected nine cells in " + line);
        }
        List<String> inIt = parts(cells.get(5));
        return new Denial(
                cells.get(0),
                phrases(cells.get(1)),
                phrases(cells.get(2)),
                phrases(cells.get(3)),
                phrases(cells.get(4)),
                inIt.stream()
                        .filter(Denials::isAllergen)
                        .map(Allergen::valueOf)
                        .collect(Collectors.toUnmodifiableSet()),
                inIt.stream().filter(name -> !isAllergen(name)).collect(Collectors.toUnmodifiableSet()),
                cells.get(7),
                cells.get(8));
    }

    private static boolean isAllergen(String name) {
        return Character.isUpperCase(name.charAt(0));
    }

    private static List<List<String>> phrases(String cell) {
        return parts(cell).stream().map(words -> List.of(words.split(" "))).toList();
    }

    static List<String> parts(String cell) {
        return Arrays.stream(cell.split("\\|")).filter(part -> !part.isBlank()).toList();
    }

    static Set<String> set(String words) {
        return Set.of(words.split(" "));
    }
}
