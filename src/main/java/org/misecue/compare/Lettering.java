package org.misecue.compare;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.align.Alignment;
import org.misecue.narration.Cue;
import org.misecue.narration.Moment;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;
import org.misecue.quantity.Quantity;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/**
 * The cards of an episode as a stream of words: each card is a source of its own and each of its lines stands for itself,
 * but that an amount alone in its line goes with the name beside it ("175 g" large, "unsalted butter" small below).
 */
final class Lettering implements Medium {

    /** Figures with their unit and nothing that could be a name. */
    private static final Pattern AMOUNT_ALONE =
            Pattern.compile("[^\\p{L}]*\\p{N}[\\p{N}\\s.,/⁄×x–-]*(?:°?\\p{L}{1,5}\\.?|°)?\\s*(?:[–-]\\s*)?");

    /** How far a card may stand from the words that it goes with. Common practice, no source. */
    private static final Duration AROUND = Duration.ofSeconds(15);

    private final Map<String, Shown> shown = new LinkedHashMap<>();
    private final List<Narration> narrations = new ArrayList<>();
    private final Map<String, List<String>> clocks;
    private final Alignment spoken;

    /** A card under the name of its source, its lines joined where they belong together. */
    private record Shown(Card card, List<CardLine> lines) {}

    /** @param spoken the steps of the narrations, which run on the films' clocks */
    Lettering(Picture picture, Alignment spoken) {
        this.clocks = picture.narrations();
        this.spoken = spoken;
        for (Card card : picture.cards()) {
            String source = card.film() + "#" + (shown.size() + 1);
            Shown one = new Shown(card, joined(card.lines()));
            shown.put(source, one);
            narrations.add(new Narration(source, cues(one), List.of()));
        }
    }

    List<Narration> narrations() {
        return narrations;
    }

    /** A card that ends with an amount has its amounts below their names, and another one above them. */
    private static List<CardLine> joined(List<CardLine> lines) {
        boolean below = isAmountAlone(lines.get(lines.size() - 1));
        List<CardLine> out = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            CardLine line = lines.get(i);
            boolean alone = isAmountAlone(line);
            if (alone && !below && i + 1 < lines.size() && !hasFigure(lines.get(i + 1))) {
                out.add(both(line, lines.get(++i)));
            } else if (alone && below && !out.isEmpty() && !hasFigure(out.get(out.size() - 1))) {
                out.set(out.size() - 1, both(out.get(out.size() - 1), line));
            } else {
                out.add(line);
            }
        }
        return out;
    }

    private static boolean isAmountAlone(CardLine line) {
        return AMOUNT_ALONE.matcher(line.text()).matches();
    }

    private static boolean hasFigure(CardLine line) {
        return line.text()
                .codePoints()
                .anyMatch(point -> Character.isDigit(point) || Character.getType(point) == Character.OTHER_NUMBER);
    }

    private static CardLine both(CardLine one, CardLine other) {
        return new CardLine(one.text() + " " + other.text(), one.doubtful() || other.doubtful());
    }

    /** Each line a speaker of its own, so that no number goes on into the next. */
    private static List<Cue> cues(Shown one) {
        List<Cue> cues = new ArrayList<>();
        for (CardLine line : one.lines()) {
            Duration from = one.card().from();
            List<Word> words = new ArrayList<>();
            for (String word : line.text().strip().split("\\s+")) {
                words.add(new Word(word, from));
            }
            cues.add(new Cue(from, one.card().to(), Optional.of("line " + cues.size()), line.text(), words));
        }
        return cues;
    }

    @Override
    public String told() {
        return "Shown";
    }

    @Override
    public Evidence evidence(WordStream words, int start, int end, Optional<Quantity> quantity) {
        Token first = words.at(start);
        Shown one = of(first);
        CardLine line = one.lines().get(first.cue());
        return new Evidence(
                Evidence.Via.SHOWN,
                new Moment(one.card().film(), one.card().from()),
                quantity,
                line.text(),
                words.words(start, end),
                line.doubtful());
    }

    @Override
    public boolean together(Token one, Token other) {
        return one.source().equals(other.source()) && one.cue() == other.cue();
    }

    /** Lines with figures that cannot be read for certain; somebody has to look at each. */
    Stream<Evidence> doubtful() {
        return shown.values().stream().flatMap(one -> one.lines().stream()
                .filter(line -> line.doubtful() && hasFigure(line))
                .map(line -> new Evidence(
                        Evidence.Via.SHOWN,
                        new Moment(one.card().film(), one.card().from()),
                        Optional.empty(),
                        line.text(),
                        "",
                        true)));
    }

    /** The steps that are on around a moment of a film; empty where nothing tells. */
    Set<Integer> stepsAround(Moment moment) {
        return Stream.of(moment.at().minus(AROUND), moment.at(), moment.at().plus(AROUND))
                .map(at -> stepAt(moment.source(), at))
                .filter(step -> step > 0)
                .collect(Collectors.toSet());
    }

    private int stepAt(String film, Duration at) {
        return clocks.getOrDefault(film, List.of()).stream()
                .mapToInt(clock -> spoken.stepAt(clock, at))
                .filter(step -> step > 0)
                .findFirst()
                .orElse(0);
    }

    @Override
    public OptionalInt stepAt(Token word) {
        Card card = of(word).card();
        return clocks.containsKey(card.film()) ? OptionalInt.of(stepAt(card.film(), card.from())) : OptionalInt.empty();
    }

    private Shown of(Token word) {
        Shown one = shown.get(word.source());
        if (one == null) {
            throw new IllegalArgumentException("no card is called " + word.source());
        }
        return one;
    }
}
