package org.misecue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * What is looked for: words, {@code "words in this order"}, amounts such as {@code 125 g}, and what narrows it down.
 * All other signs only separate words, so hardly any query is ill-formed.
 *
 * @param parts all should be found
 * @param goingOn whether the last part is a word that may not be written to its end
 */
record Ask(List<Part> parts, Narrowing within, boolean goingOn) {

    private static final Pattern PIECE =
            Pattern.compile("[\"\u201C\u201D]([^\"\u201C\u201D]*)[\"\u201C\u201D]?|[^\\s\"\u201C\u201D]+");

    /** After these comes what is done: "when does she fold". */
    private static final Set<String> DOERS = Set.of("i", "we", "you", "she", "he", "they", "to");

    private static final Pattern QUOTE = Pattern.compile("[\"\u201C\u201D]");

    /**
     * Words that belong together: one, a quoted phrase, or an amount.
     *
     * @param amount its value, where it is one
     * @param doing whether it is a word for what is done, as far as its form and its place show
     */
    record Part(List<Token> tokens, boolean quoted, Optional<String> amount, boolean doing) {
        Part(List<Token> tokens, boolean quoted) {
            this(tokens, quoted, Optional.empty(), false);
        }

        static Part word(Token word, boolean afterDoer) {
            return new Part(List.of(word), false, Optional.empty(), afterDoer || word.isDoing());
        }
    }

    /** @throws BadInput where a time that narrows it down cannot be read */
    static Ask of(String asked) {
        Narrowing.Split split = Narrowing.of(asked);
        String query = split.words();
        List<Part> parts = new ArrayList<>();
        Optional<Part> unfinished = Optional.empty();
        Matcher piece = PIECE.matcher(query);
        int next = 0;
        String before = "";
        while (piece.find(next)) {
            next = piece.end();
            if (piece.group(1) != null) {
                addPhrase(piece.group(1), parts);
            } else {
                Optional<AskedAmount> amount = AskedAmount.at(unquoted(query, piece.start()));
                if (amount.isPresent()) {
                    next = piece.start() + amount.get().length();
                    parts.add(part(query.substring(piece.start(), next), amount.get()));
                    continue;
                }
                boolean afterDoer = DOERS.contains(before);
                Token.of(piece.group()).forEach(token -> parts.add(Part.word(token, afterDoer)));
                before = piece.group().toLowerCase(Locale.ROOT);
                if (piece.end() == query.length() && Character.isLetterOrDigit(query.charAt(query.length() - 1))) {
                    unfinished = last(parts);
                }
            }
        }
        List<Part> telling = withoutCommonWords(parts);
        return new Ask(telling, split.narrowing(), unfinished.isPresent() && unfinished.equals(last(telling)));
    }

    /** @throws BadInput where the query has no word, or a time cannot be read */
    static Ask telling(String query) {
        Ask ask = of(query);
        if (ask.parts.isEmpty() && ask.within.isNone()) {
            throw new BadInput(Place.of("find"), "expected a word to look for, such as: find butter");
        }
        return ask;
    }

    /** The word that may not be written to its end; only where {@link #goingOn}. */
    Token begun() {
        return parts.get(parts.size() - 1).tokens().get(0);
    }

    Ask withoutLast() {
        return new Ask(parts.subList(0, parts.size() - 1), within, false);
    }

    /** The same words in any order, for what nobody said in just this one. */
    Ask withoutQuotes() {
        List<Part> loose = new ArrayList<>();
        for (Part part : parts) {
            if (!part.quoted()) {
                loose.add(part);
                continue;
            }
            String before = "";
            for (Token token : part.tokens()) {
                loose.add(Part.word(token, DOERS.contains(before)));
                before = token.word();
            }
        }
        return new Ask(withoutCommonWords(loose), within, false);
    }

    boolean hasQuotes() {
        return parts.stream().anyMatch(Part::quoted);
    }

    private static Optional<Part> last(List<Part> parts) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.get(parts.size() - 1));
    }

    private static void addPhrase(String phrase, List<Part> parts) {
        Optional<AskedAmount> amount = AskedAmount.at(phrase.strip())
                .filter(asked -> asked.length() == phrase.strip().length());
        if (amount.isPresent()) {
            parts.add(part(phrase, amount.get()));
        } else if (!Token.of(phrase).isEmpty()) {
            parts.add(new Part(Token.of(phrase), true));
        }
    }

    private static Part part(String words, AskedAmount amount) {
        return new Part(Token.of(words), false, Optional.of(amount.key()), false);
    }

    /** The query from here to the next mark of quotation. */
    private static String unquoted(String query, int from) {
        Matcher quote = QUOTE.matcher(query);
        return query.substring(from, quote.find(from) ? quote.start() : query.length());
    }

    private static List<Part> withoutCommonWords(List<Part> parts) {
        List<Part> telling = parts.stream()
                .filter(part -> part.quoted()
                        || part.amount().isPresent()
                        || !part.tokens().get(0).isCommon())
                .toList();
        return telling.isEmpty() ? List.copyOf(parts) : telling;
    }
}
