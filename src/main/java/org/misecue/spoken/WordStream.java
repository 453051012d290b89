package org.misecue.spoken;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.misecue.narration.Cue;
import org.misecue.narration.Moment;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;

/** All narration of an episode as one stream of tokens. Where the recogniser cut its cues does not matter here. */
public final class WordStream {

    /** A silence that ends a thought. From listening; no source. */
    private static final Duration LONG_PAUSE = Duration.ofMillis(2500);

    private static final int QUOTE_BEFORE = 8;
    private static final int QUOTE_AFTER = 8;

    private final List<Narration> narrations;
    private final List<Token> tokens;

    private WordStream(List<Narration> narrations, List<Token> tokens) {
        this.narrations = narrations;
        this.tokens = tokens;
    }

    public static WordStream of(List<Narration> narrations) {
        List<Token> tokens = new ArrayList<>();
        for (Narration narration : narrations) {
            append(narration, tokens);
        }
        return new WordStream(List.copyOf(narrations), List.copyOf(tokens));
    }

    private static void append(Narration narration, List<Token> tokens) {
        boolean border = true;
        String speaker = "";
        Duration last = Duration.ZERO;
        for (int c = 0; c < narration.cues().size(); c++) {
            Cue cue = narration.cues().get(c);
            border |= !cue.speaker().orElse(speaker).equals(speaker);
            speaker = cue.speaker().orElse(speaker);
            for (int w = 0; w < cue.words().size(); w++) {
                Word word = cue.words().get(w);
                border |= word.at().minus(last).compareTo(LONG_PAUSE) > 0;
                last = word.at();
                Tokens.Split split = Tokens.split(word.text());
                border |= split.turn();
                for (String text : split.texts()) {
                    tokens.add(new Token(text, narration.source(), c, w, word.at(), border));
                    border = false;
                }
                border |= split.endsSentence();
            }
        }
    }

    public List<Token> tokens() {
        return tokens;
    }

    public int size() {
        return tokens.size();
    }

    public Token at(int index) {
        return tokens.get(index);
    }

    /** The normal form at an index, empty outside the stream: keeps the grammar free of bounds checks. */
    public String text(int index) {
        return index >= 0 && index < tokens.size() ? tokens.get(index).text() : "";
    }

    public boolean border(int index) {
        return index <= 0 || index >= tokens.size() || tokens.get(index).border();
    }

    public Moment moment(int index) {
        return new Moment(at(index).source(), at(index).at());
    }

    /** The words of {@code [start, end)} as the recogniser wrote them. */
    public String words(int startInclusive, int endExclusive) {
        StringBuilder out = new StringBuilder();
        int cue = -1;
        int word = -1;
        for (int i = Math.max(0, startInclusive); i < Math.min(endExclusive, tokens.size()); i++) {
            Token token = tokens.get(i);
            if (token.cue() == cue && token.word() == word) {
                continue;
            }
            cue = token.cue();
            word = token.word();
            out.append(out.isEmpty() ? "" : " ").append(original(token));
        }
        return out.toString();
    }

    /** The words with some of their surroundings, within one source. */
    public String quote(int startInclusive, int endExclusive) {
        int from = startInclusive;
        while (from > 0 && startInclusive - from < QUOTE_BEFORE && sameSource(from - 1, startInclusive)) {
            from--;
        }
        int to = endExclusive;
        while (to < size() && to - endExclusive < QUOTE_AFTER && sameSource(to, startInclusive)) {
            to++;
        }
        return words(from, to);
    }

    /** The normal forms of a stretch, for phrase tables and reasons. */
    public String normal(int startInclusive, int endExclusive) {
        return tokens.subList(Math.max(0, startInclusive), Math.min(endExclusive, size())).stream()
                .map(Token::text)
                .collect(Collectors.joining(" "));
    }

    private boolean sameSource(int one, int other) {
        return at(one).source().equals(at(other).source());
    }

    private String original(Token token) {
        return narrations.stream()
                .filter(narration -> narration.source().equals(token.source()))
                .findFirst()
                .map(narration -> narration
                        .cues()
                        .get(token.cue())
                        .words()
                        .get(token.word())
                        .text())
                .orElse(token.text());
    }
}
