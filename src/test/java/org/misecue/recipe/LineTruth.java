package org.misecue.recipe;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * What a line of a recipe means, written by people who never saw the program: one row of a file of tab-separated values
 * with the columns text, amount, upper amount, unit, ingredient, preparation. The conventions stand in README.md beside
 * the files.
 */
record LineTruth(
        String style,
        String text,
        Optional<RationalNumber> amount,
        Optional<RationalNumber> upper,
        String unit,
        String ingredient,
        String preparation) {

    /** Every row of the files of a folder, in the order of the files' names. */
    static List<LineTruth> of(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            List<LineTruth> rows = new ArrayList<>();
            for (Path file : files.filter(each -> each.toString().endsWith(".tsv"))
                    .sorted()
                    .toList()) {
                String style = file.getFileName().toString().replace(".tsv", "");
                for (String row : Files.readAllLines(file)) {
                    rows.add(row(style, row));
                }
            }
            return List.copyOf(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LineTruth row(String style, String row) {
        String[] cells = row.split("\t", -1);
        if (cells.length != 6) {
            throw new IllegalStateException(style + ": six columns expected in: " + row);
        }
        return new LineTruth(style, cells[0], number(cells[1]), number(cells[2]), cells[3], cells[4], cells[5]);
    }

    private static Optional<RationalNumber> number(String cell) {
        if (cell.isBlank()) {
            return Optional.empty();
        }
        RationalNumber sum = Rationals.ZERO;
        for (String part : cell.strip().split(" ", -1)) {
            String[] sides = part.split("/", -1);
            RationalNumber value = Rationals.of(sides[0]);
            sum = sum.add(sides.length == 1 ? value : value.divide(Rationals.of(sides[1])));
        }
        return Optional.of(sum);
    }

    /** What of the reading is not as this row has it; empty where all of it is right. */
    List<String> faults(IngredientLine line) {
        List<String> faults = new ArrayList<>();
        Optional<RationalNumber> least =
                line.quantity().flatMap(each -> each.amount().least());
        Optional<RationalNumber> most = line.quantity()
                .flatMap(each -> each.amount().most())
                .filter(value -> !Optional.of(value).equals(least));
        String measure = least.isEmpty()
                ? ""
                : line.quantity().map(Quantity::unit).orElseThrow().code();
        check(faults, "amount", plain(amount), plain(least));
        check(faults, "upper", plain(upper), plain(most));
        check(faults, "unit", unit, measure);
        check(faults, "name", words(ingredient), words(line.ingredient()));
        check(faults, "preparation", bag(preparation), bag(line.preparation()));
        return faults;
    }

    private static void check(List<String> faults, String what, String expected, String actual) {
        if (!expected.equals(actual)) {
            faults.add("%s [%s] read [%s]".formatted(what, expected, actual));
        }
    }

    private static String plain(Optional<RationalNumber> value) {
        return value.map(Rationals::decimal)
                .map(each -> each.stripTrailingZeros().toPlainString())
                .orElse("");
    }

    private static String words(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replace('’', '\'')
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** The words without their order: several preparations may be told in any. */
    private static String bag(String text) {
        return String.join(
                " ",
                Arrays.stream(words(text).split("[^\\p{L}\\p{N}%'½¼¾⅓⅔⅛/.-]+", -1))
                        .map(word -> word.replaceAll("^[.-]+|[.]+$", ""))
                        .filter(word -> !word.isEmpty() && !word.equals("and"))
                        .sorted()
                        .toList());
    }
}
