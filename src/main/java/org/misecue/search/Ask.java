package org.misecue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is looked for: words, {@code "words in this order"} and {@code step:3}. All other signs only separate words, so no
 * query is ill-formed.
 *
 * @param parts all should be found
 * @param step only passages of this step
 */
record Ask(List<Part> parts, OptionalInt step) {

    private static final Pattern PIECE = Pattern.compile(
            "(?i)\\bstep:\\s*(\\d{1,6})\\b|[\"\u201C\u201D]([^\"\u201C\u201D]*)[\"\u201C\u201D]?|[^\\s\"\u201C\u201D]+");

    /** Words that belong together: one, or a quoted phrase. */
    record Part(List<Token> tokens, boolean quoted) {}

    static Ask of(String query) {
        List<Part> parts = new ArrayList<>();
        OptionalInt step = OptionalInt.empty();
        Matcher piece = PIECE.matcher(query);
        while (piece.find()) {
            if (piece.group(1) != null) {
                step = OptionalInt.of(Integer.parseInt(piece.group(1)));
            } else if (piece.group(2) != null) {
                addPhrase(Token.of(piece.group(2)), parts);
            } else {
                Token.of(piece.group()).forEach(token -> parts.add(new Part(List.of(token), false)));
            }
        }
        return new Ask(withoutCommonWords(parts), step);
    }

    boolean isEmpty() {
        return parts.isEmpty() && step.isEmpty();
    }

    private static void addPhrase(List<Token> tokens, List<Part> parts) {
        if (!tokens.isEmpty()) {
            parts.add(new Part(tokens, true));
        }
    }

    private static List<Part> withoutCommonWords(List<Part> parts) {
        List<Part> telling = parts.stream()
                .filter(part -> part.quoted() || !part.tokens().get(0).isCommon())
                .toList();
        return telling.isEmpty() ? List.copyOf(parts) : telling;
    }
}
