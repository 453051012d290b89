package org.misecue.edit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.align.Stem;
import org.misecue.align.StepSpan;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/** Where the words of a shot are said closest together. */
final class ShotListener {

    /** About a quarter of a minute of speech: what is said over one shot. From listening; no source. */
    private static final int REACH = 45;

    /** How much of what belongs to a shot has to be said. */
    private static final double ENOUGH = 0.3;

    private static final Duration LAST_WORD = Duration.ofSeconds(1);

    private record Heard(String stem, Token word, int at) {}

    /** @param share of the shot's words */
    record Found(Duration from, Duration to, double share) {}

    private final WordStream words;
    private final List<String> stems;

    ShotListener(WordStream words) {
        this.words = words;
        // "The oven's at 350" is of the oven.
        this.stems = words.tokens().stream()
                .map(word -> Stem.of(word.text().replaceFirst("'s$", "")))
                .toList();
    }

    boolean hearsNothing() {
        return stems.isEmpty();
    }

    /** @param spans in which the shot's step is on */
    Optional<Found> find(ShotWords wanted, List<StepSpan> spans) {
        List<Heard> heard = heard(wanted, spans);
        Optional<Found> best = Optional.empty();
        for (int first = 0; first < heard.size(); first++) {
            Found found = from(heard, first, wanted);
            if (best.isEmpty() || found.share() > best.get().share()) {
                best = Optional.of(found);
            }
        }
        return best.filter(found -> found.share() >= ENOUGH);
    }

    private List<Heard> heard(ShotWords wanted, List<StepSpan> spans) {
        List<Heard> heard = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            Token word = words.at(at);
            String stem = stems.get(at);
            if (wanted.weight(stem) > 0 && spans.stream().anyMatch(span -> span.holds(word))) {
                heard.add(new Heard(stem, word, at));
            }
        }
        return heard;
    }

    private static Found from(List<Heard> heard, int first, ShotWords wanted) {
        Set<String> seen = new HashSet<>();
        double weight = 0;
        Heard start = heard.get(first);
        Heard last = start;
        for (Heard one : heard.subList(first, heard.size())) {
            if (one.at - start.at >= REACH || !one.word.source().equals(start.word.source())) {
                break;
            }
            if (seen.add(one.stem)) {
                weight += wanted.weight(one.stem);
                last = one;
            }
        }
        double share = wanted.isSign(seen.size()) ? weight / wanted.total() : 0;
        return new Found(start.word.at(), last.word.at().plus(LAST_WORD), share);
    }
}
