package org.misecue.edit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.misecue.narration.Clock;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/**
 * Captions that can be read in time. All ways of cutting the words of one speaker are weighed against each other: captions
 * end with a sentence or a breath, not between a number and its unit, are neither too long nor gone too soon, and begin with
 * their first word. What a speaker says faster than anybody reads is kept whole, and told.
 */
public final class Captioner {

    private static final Duration PAUSE = Duration.ofMillis(700);
    private static final int CAPTION = 40;
    private static final int NO_SENTENCE_END = 35;
    private static final int TOO_SHORT = 120;
    private static final int TOO_FAST = 12;

    private final CaptionRules rules;
    private final LineBreaker breaker;

    private Captioner(CaptionRules rules) {
        this.rules = rules;
        this.breaker = new LineBreaker(rules);
    }

    /**
     * @param captions in time order, none over another
     * @param notes what is said faster than it can be read
     */
    public record Captions(List<Caption> captions, List<Note> notes) {}

    /** @param figures amounts to be shown as figures instead of the words that were said */
    public static Captions of(Narration narration, Figures figures, CaptionRules rules) {
        return of(List.of(narration), figures, rules);
    }

    /** @param narrations those of one film */
    public static Captions of(List<Narration> narrations, Figures figures, CaptionRules rules) {
        Captioner captioner = new Captioner(rules);
        List<Caption> captions = narrations.stream()
                .flatMap(narration -> captioner.captions(narration, figures).stream())
                .sorted(Comparator.comparing(Caption::start))
                .toList();
        List<Caption> spaced = captioner.spaced(once(captions));
        String sources = narrations.stream().map(Narration::source).collect(Collectors.joining(", "));
        return new Captions(spaced, captioner.notes(sources, spaced));
    }

    /** The same narration in two formats is shown once. */
    private static List<Caption> once(List<Caption> captions) {
        List<Caption> once = new ArrayList<>();
        for (Caption caption : captions) {
            boolean again = !once.isEmpty()
                    && once.get(once.size() - 1).lines().equals(caption.lines())
                    && once.get(once.size() - 1).start().equals(caption.start());
            if (!again) {
                once.add(caption);
            }
        }
        return once;
    }

    private List<Caption> captions(Narration narration, Figures figures) {
        List<Caption> captions = new ArrayList<>();
        List<Cue> run = new ArrayList<>();
        List<List<Cue>> runs = new ArrayList<>();
        for (Cue cue : narration.cues()) {
            if (!run.isEmpty() && breaks(run.get(run.size() - 1), cue)) {
                runs.add(List.copyOf(run));
                run.clear();
            }
            run.add(cue);
        }
        runs.add(List.copyOf(run));
        for (List<Cue> one : runs) {
            List<Said> words = words(narration.source(), one, figures);
            if (!words.isEmpty()) {
                captions.addAll(cut(words, one.get(0).speaker()));
            }
        }
        return captions;
    }

    /** A new caption begins with another speaker and after a pause. */
    private static boolean breaks(Cue last, Cue next) {
        return !last.speaker().equals(next.speaker())
                || next.start().minus(last.end()).compareTo(PAUSE) > 0;
    }

    private static List<Said> words(String source, List<Cue> cues, Figures figures) {
        List<Said> words = new ArrayList<>();
        for (Cue cue : cues) {
            for (int i = 0; i < cue.words().size(); i++) {
                Duration start = cue.words().get(i).at();
                Duration next =
                        i + 1 < cue.words().size() ? cue.words().get(i + 1).at() : cue.end();
                Duration end = next.compareTo(start) < 0 ? start : next;
                words.add(new Said(cue.words().get(i).text(), start, end));
            }
        }
        return figures.put(source, words);
    }

    /** The cheapest way to cut the words, found from the end forwards. */
    private List<Caption> cut(List<Said> words, Optional<String> speaker) {
        int count = words.size();
        long[] cheapest = new long[count + 1];
        int[] next = new int[count + 1];
        Arrays.fill(cheapest, 0, count, Long.MAX_VALUE / 4);
        for (int from = count - 1; from >= 0; from--) {
            for (int to = from + 1; to <= count; to++) {
                List<Said> piece = words.subList(from, to);
                boolean alone = to == from + 1;
                Optional<List<String>> lines = breaker.lines(piece);
                boolean tooLong = length(piece).compareTo(rules.longest()) > 0;
                if (!alone && (lines.isEmpty() || tooLong)) {
                    break;
                }
                long cost = cost(words, from, to) + cheapest[to];
                if (cost < cheapest[from]) {
                    cheapest[from] = cost;
                    next[from] = to;
                }
            }
        }
        List<Caption> captions = new ArrayList<>();
        for (int from = 0; from < count; from = next[from]) {
            List<Said> piece = words.subList(from, next[from]);
            List<String> lines =
                    breaker.lines(piece).orElseGet(() -> List.of(LineBreaker.text(piece, 0, piece.size())));
            captions.add(new Caption(
                    piece.get(0).start(), piece.get(piece.size() - 1).end(), speaker, lines));
        }
        return captions;
    }

    private long cost(List<Said> words, int from, int to) {
        List<Said> piece = words.subList(from, to);
        Said last = words.get(to - 1);
        long cost = CAPTION + Math.max(0, LineBreaker.breakCost(last));
        cost += last.endsSentence() ? 0 : last.endsClause() ? NO_SENTENCE_END / 3 : NO_SENTENCE_END;
        // Time that the next caption leaves free can be used by this one.
        Duration free = to < words.size()
                ? words.get(to).start().minus(piece.get(0).start())
                : length(piece).plus(rules.shortest());
        Duration stands = free.minus(rules.gap());
        if (stands.compareTo(rules.shortest()) < 0) {
            cost += TOO_SHORT;
        }
        int over = LineBreaker.text(words, from, to).length() - rules.room(stands);
        return cost + Math.max(0, over) * TOO_FAST;
    }

    private static Duration length(List<Said> piece) {
        return piece.get(piece.size() - 1).end().minus(piece.get(0).start());
    }

    /** Each stands as long as it is read, as far as the next one lets it, and never over it. */
    private List<Caption> spaced(List<Caption> captions) {
        List<Caption> spaced = new ArrayList<>();
        for (int i = 0; i < captions.size(); i++) {
            Caption one = captions.get(i);
            int signs = one.lines().stream().mapToInt(String::length).sum()
                    + one.lines().size()
                    - 1;
            Duration wanted = max(one.end(), one.start().plus(max(rules.shortest(), time(signs))));
            Duration latest =
                    i + 1 < captions.size() ? captions.get(i + 1).start().minus(rules.gap()) : wanted;
            Duration most = one.start().plus(rules.longest());
            Duration end = min(min(wanted, latest), most);
            Duration least = one.start().plusMillis(1);
            spaced.add(new Caption(one.start(), max(end, least), one.speaker(), one.lines()));
        }
        return spaced;
    }

    private Duration time(int signs) {
        return Duration.ofMillis((signs * 1000L + rules.speed() - 1) / rules.speed());
    }

    private List<Note> notes(String source, List<Caption> captions) {
        return captions.stream()
                .filter(one -> one.speed() > rules.speed() + 0.5)
                .map(one -> new Note(
                        Place.of(source),
                        "at %s more is said than can be read in time (%d signs a second): shorten the caption"
                                .formatted(Clock.hms(one.start()), Math.round(one.speed()))))
                .toList();
    }

    private static Duration max(Duration a, Duration b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static Duration min(Duration a, Duration b) {
        return a.compareTo(b) <= 0 ? a : b;
    }
}
