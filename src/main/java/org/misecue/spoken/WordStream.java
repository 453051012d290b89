package org.misecue.spoken;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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
    private final int limit;
    private final Set<Mechanism> mechanisms;

    private WordStream(List<Narration> narrations, List<Token> tokens, int limit, Set<Mechanism> mechanisms) {
        this.narrations = narrations;
        this.tokens = tokens;
        this.limit = limit;
        this.mechanisms = mechanisms;
    }

    public static WordStream of(List<Narration> narrations) {
        return of(narrations, EnumSet.allOf(Mechanism.class));
    }

    /** The same, to be listened to with only some of the mechanisms: for measuring, not for use. */
    public static WordStream of(List<Narration> narrations, Set<Mechanism> mechanisms) {
        List<Token> tokens = new ArrayList<>();
        for (Narration narration : narrations) {
            append(narration, tokens, mechanisms.contains(Mechanism.OVER_CUES));
        }
        Set<Mechanism> own = EnumSet.noneOf(Mechanism.class);
        own.addAll(mechanisms);
        return new WordStream(List.copyOf(narrations), List.copyOf(tokens), tokens.size(), own);
    }

    private static void append(Narration narration, List<Token> tokens, boolean overCues) {
        boolean border = true;
        boolean wall = true;
        String speaker = "";
        Duration last = Duration.ZERO;
        for (int c = 0; c < narration.cues().size(); c++) {
            Cue cue = narration.cues().get(c);
            wall |= !overCues || !cue.speaker().orElse(speaker).equals(speaker);
            speaker = cue.speaker().orElse(speaker);
            for (int w = 0; w < cue.words().size(); w++) {
                Word word = cue.words().get(w);
                border |= word.at().minus(last).compareTo(LONG_PAUSE) > 0;
                last = word.at();
                Tokens.Split split = Tokens.split(word.text());
                wall |= split.turn();
                for (String text : split.texts()) {
                    tokens.add(new Token(text, narration.source(), c, w, word.at(), border || wall, wall));
                    border = false;
                    wall = false;
                }
                wall |= split.endsSentence();
            }
        }
    }

    /** Whether the words are listened to with the mechanism. */
    public boolean on(Mechanism mechanism) {
        return mechanisms.contains(mechanism);
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
        return index >= 0 && index < limit ? tokens.get(index).text() : "";
    }

    /** Whether one of these words is said in {@code [from, to)}, which may reach over the ends. */
    public boolean saysAny(Set<String> these, int from, int to) {
        for (int at = from; at < to; at++) {
            if (these.contains(text(at))) {
                return true;
            }
        }
        return false;
    }

    /** The same stream as if it ended at an index. */
    WordStream until(int end) {
        return new WordStream(narrations, tokens, end, mechanisms);
    }

    /** The first sentence or turn that begins inside {@code (start, end)}; {@code end} where none does. */
    int wallWithin(int start, int end) {
        for (int at = start + 1; at < end; at++) {
            if (tokens.get(at).wall()) {
                return at;
            }
        }
        return end;
    }

    /** Whether a sentence or turn ends between the two. */
    public boolean walled(int end, int start) {
        return wallWithin(end - 1, start + 1) <= start;
    }

    public boolean wall(int index) {
        return index <= 0 || index >= tokens.size() || tokens.get(index).wall();
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
        StringBuilder out = new StringBuilder();
        for (int at = Math.max(0, startInclusive); at < Math.min(endExclusive, size()); at++) {
            out.append(out.isEmpty() ? "" : " ").append(tokens.get(at).text());
        }
        return out.toString();
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
