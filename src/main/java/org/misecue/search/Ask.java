package org.misecue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * What is looked for: words, {@code "words in this order"} and {@code step:3}. All other signs only separate words, so no
 * query is ill-formed.
 *
 * @param parts all should be found
 * @param step only passages of this step
 * @param goingOn whether the last part is a word that may not be written to its end
 */
record Ask(List<Part> parts, OptionalInt step, boolean goingOn) {

    private static final Pattern PIECE = Pattern.compile(
            "(?i)\\bstep:\\s*(\\d{1,6})\\b|[\"\u201C\u201D]([^\"\u201C\u201D]*)[\"\u201C\u201D]?|[^\\s\"\u201C\u201D]+");

    /** Words that belong together: one, or a quoted phrase. */
    record Part(List<Token> tokens, boolean quoted) {}

    static Ask of(String query) {
        List<Part> parts = new ArrayList<>();
        OptionalInt step = OptionalInt.empty();
        Optional<Part> unfinished = Optional.empty();
        Matcher piece = PIECE.matcher(query);
        while (piece.find()) {
            if (piece.group(1) != null) {
                step = OptionalInt.of(Integer.parseInt(piece.group(1)));
            } else if (piece.group(2) != null) {
                addPhrase(Token.of(piece.group(2)), parts);
            } else {
                Token.of(piece.group()).forEach(token -> parts.add(new Part(List.of(token), false)));
                if (piece.end() == query.length() && Character.isLetterOrDigit(query.charAt(query.length() - 1))) {
                    unfinished = last(parts);
                }
            }
        }
        List<Part> telling = withoutCommonWords(parts);
        return new Ask(telling, step, unfinished.isPresent() && unfinished.equals(last(telling)));
    }

    /** @throws BadInput where the query has no word */
    static Ask telling(String query) {
        Ask ask = of(query);
        if (ask.parts.isEmpty() && ask.step.isEmpty()) {
            throw new BadInput(Place.of("find"), "expected a word to look for, such as: find butter");
        }
        return ask;
    }

    /** The word that may not be written to its end; only where {@link #goingOn}. */
    Token begun() {
        return parts.get(parts.size() - 1).tokens().get(0);
    }

    Ask withoutLast() {
        return new Ask(parts.subList(0, parts.size() - 1), step, false);
    }

    private static Optional<Part> last(List<Part> parts) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.get(parts.size() - 1));
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
