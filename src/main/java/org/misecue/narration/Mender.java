package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/**
 * Puts what was heard in the place of what a recogniser wrote. A mend whose words are no longer where they were is told and
 * left out: the narration is another one now, and somebody has to listen again.
 */
public final class Mender {

    /** Recognisers run a second time cut their cues elsewhere, and their times move a little. */
    private static final Duration REACH = Duration.ofSeconds(2);

    private final String source;
    private final List<Cue> cues;
    private final List<Note> notes;
    private final List<Mend> mended = new ArrayList<>();

    private Mender(Narration narration) {
        this.source = narration.source();
        this.cues = new ArrayList<>(narration.cues());
        this.notes = new ArrayList<>(narration.notes());
    }

    /** A word by its cue and its place in it. */
    private record Spot(int cue, int word) {}

    /** @param mends in any order; each takes the words nearest to its time */
    public static Narration mended(Narration narration, List<Mend> mends) {
        if (mends.isEmpty()) {
            return narration;
        }
        Mender mender = new Mender(narration);
        mends.forEach(mender::mend);
        mender.cues.removeIf(cue -> cue.words().isEmpty());
        return new Narration(
                narration.source(), List.copyOf(mender.cues), List.copyOf(mender.notes), List.copyOf(mender.mended));
    }

    private void mend(Mend mend) {
        find(mend)
                .ifPresentOrElse(
                        spots -> {
                            replace(spots, mend);
                            mended.add(mend);
                        },
                        () -> notes.add(new Note(
                                Place.of(source),
                                "“%s” is no longer said at %s, so what was heard there, “%s”, was left out; listen again"
                                        .formatted(mend.was(), Clock.hms(mend.at()), mend.heard()))));
    }

    /** The words nearest to the mend's time, over the borders of cues. */
    private Optional<List<Spot>> find(Mend mend) {
        List<String> wanted = mend.wasWords();
        List<Spot> all = new ArrayList<>();
        for (int cue = 0; cue < cues.size(); cue++) {
            for (int word = 0; word < cues.get(cue).words().size(); word++) {
                Spot spot = new Spot(cue, word);
                if (!Mend.plain(word(spot).text()).isEmpty()) {
                    all.add(spot); // a dash is no word
                }
            }
        }
        Optional<List<Spot>> best = Optional.empty();
        Duration nearest = REACH;
        for (int from = 0; !wanted.isEmpty() && from + wanted.size() <= all.size(); from++) {
            List<Spot> spots = all.subList(from, from + wanted.size());
            Duration away = at(spots.get(0)).minus(mend.at()).abs();
            if (away.compareTo(nearest) <= 0 && said(spots).equals(wanted)) {
                nearest = away;
                best = Optional.of(List.copyOf(spots));
            }
        }
        return best;
    }

    private Word word(Spot spot) {
        return cues.get(spot.cue()).words().get(spot.word());
    }

    private Duration at(Spot spot) {
        return word(spot).at();
    }

    private List<String> said(List<Spot> spots) {
        return spots.stream()
                .flatMap(spot -> Mend.plain(word(spot).text()).stream())
                .toList();
    }

    /** What was heard is spread over the time of what was written, all of it in the cue where it began. */
    private void replace(List<Spot> spots, Mend mend) {
        Spot first = spots.get(0);
        Duration start = at(first);
        Duration span = end(spots.get(spots.size() - 1)).minus(start);
        List<String> heard = mend.heardWords();
        List<Word> put = new ArrayList<>();
        for (int i = 0; i < heard.size(); i++) {
            put.add(new Word(heard.get(i), start.plus(span.multipliedBy(i).dividedBy(heard.size()))));
        }
        for (int cue = first.cue(); cue <= spots.get(spots.size() - 1).cue(); cue++) {
            int here = cue;
            List<Word> words = new ArrayList<>(cues.get(cue).words());
            spots.stream()
                    .filter(spot -> spot.cue() == here)
                    .map(Spot::word)
                    .sorted(java.util.Comparator.reverseOrder())
                    .forEach(at -> words.remove((int) at));
            if (cue == first.cue()) {
                words.addAll(first.word(), put);
            }
            cues.set(cue, withWords(cues.get(cue), words));
        }
    }

    private Duration end(Spot spot) {
        Cue cue = cues.get(spot.cue());
        return spot.word() + 1 < cue.words().size()
                ? cue.words().get(spot.word() + 1).at()
                : cue.end();
    }

    private static Cue withWords(Cue cue, List<Word> words) {
        String text = String.join(" ", words.stream().map(Word::text).toList());
        return new Cue(cue.start(), cue.end(), cue.speaker(), text, List.copyOf(words));
    }
}
