package org.misecue.recipe;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Prints how many sentences of methods are wholly understood, names those of the odd half that are not, and measures the even half with "even". */
final class MethodReport {

    private MethodReport() {}

    public static void main(String[] arguments) {
        List<String> options = List.of(arguments);
        for (String file : List.of("sentences", "more-sentences")) {
            System.out.println(file + ": odd half " + share(MethodSentences.odd(file)));
            if (options.contains("even")) {
                System.out.println("  even half " + share(MethodSentences.even(file)));
                System.out.println("    uses " + share(MethodSentences.even(file), MethodSentences.Row::uses));
                System.out.println("    settings " + share(MethodSentences.even(file), MethodSentences.Row::settings));
                System.out.println(
                        "    techniques " + share(MethodSentences.even(file), MethodSentences.Row::techniques));
                System.out.println("    minutes " + share(MethodSentences.even(file), MethodSentences.Row::minutes));
            }
            (file.equals("sentences")
                            ? Stream.concat(MethodSentences.odd(file), MethodSentences.even(file))
                            : MethodSentences.odd(file))
                    .filter(row -> !row.equals(row.understood()))
                    .forEach(row -> System.out.println(row + "\n   " + told(row) + "\n   " + told(row.understood())));
        }
    }

    /** "58 of 66". */
    private static String share(Stream<MethodSentences.Row> rows) {
        return share(rows, row -> row);
    }

    private static String share(Stream<MethodSentences.Row> rows, Function<MethodSentences.Row, Object> part) {
        List<MethodSentences.Row> all = rows.toList();
        long right = all.stream()
                .filter(row -> part.apply(row).equals(part.apply(row.understood())))
                .count();
        return right + " of " + all.size();
    }

    private static String told(MethodSentences.Row row) {
        return String.join(" | ", row.uses(), row.settings(), row.techniques(), row.minutes());
    }
}
