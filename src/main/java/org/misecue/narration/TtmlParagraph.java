package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The words of one paragraph as they come, with the times and the voices of its spans. */
final class TtmlParagraph {

    private final int line;
    private final TtmlTime time;
    private final List<SpokenWord> words = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private final List<String> voices = new ArrayList<>();
    private final List<TtmlTime> spans = new ArrayList<>();
    private Optional<Duration> at = Optional.empty();
    private boolean untimed;

    TtmlParagraph(int line, TtmlTime time) {
        this.line = line;
        this.time = time;
    }

    void say(String words, Optional<String> voice) {
        text.append(words);
        if (!words.isBlank()) {
            untimed |= at.isEmpty();
            voice.ifPresent(voices::add);
        }
    }

    /** What follows is said within a span that has a time of its own, or no longer. */
    void turn(Optional<TtmlTime> span) {
        words.addAll(SpokenWord.startingAt(at, text.toString()));
        text.setLength(0);
        at = span.map(TtmlTime::begin);
        span.ifPresent(spans::add);
    }

    /** Where nothing tells when it is said it cannot be a cue. */
    boolean isTimed() {
        return time.told() || !spans.isEmpty();
    }

    CueSheet.Draft draft() {
        turn(Optional.empty());
        List<String> different = voices.stream().distinct().toList();
        Optional<Duration> first = spans.stream().map(TtmlTime::begin).min(Comparator.naturalOrder());
        Optional<Duration> last =
                spans.stream().flatMap(span -> span.end().stream()).max(Comparator.naturalOrder());
        Duration start = untimed ? time.begin() : first.orElse(time.begin());
        Optional<Duration> end = untimed ? time.end() : last.or(time::end);
        return new CueSheet.Draft(
                line,
                start,
                end,
                different.size() == 1 ? Optional.of(different.get(0)) : Optional.empty(),
                List.copyOf(words));
    }
}
