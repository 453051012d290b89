package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A word as read, with its time where the file has one. */
record SpokenWord(String text, Optional<Duration> at) {

    /** Cuts a text at white space, no-break spaces included. */
    static List<SpokenWord> of(String text) {
        return startingAt(Optional.empty(), text);
    }

    /** @param at when the first word begins, where that is known */
    static List<SpokenWord> startingAt(Optional<Duration> at, String text) {
        List<SpokenWord> words = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || isSpace(text.charAt(i))) {
                if (i > from) {
                    words.add(new SpokenWord(text.substring(from, i), words.isEmpty() ? at : Optional.empty()));
                }
                from = i + 1;
            }
        }
        return words;
    }

    /**
     * Gives every word a time: its own where it lies within the cue and not before that of an earlier word; the others
     * are spread evenly between their neighbours.
     */
    static List<Word> timed(List<SpokenWord> words, Duration start, Duration end) {
        List<Word> timed = new ArrayList<>();
        Duration from = start;
        int first = 0;
        for (int i = 1; i <= words.size(); i++) {
            Duration notBefore = from;
            Optional<Duration> known = i == words.size()
                    ? Optional.of(end)
                    : words.get(i).at().filter(at -> at.compareTo(notBefore) >= 0 && at.compareTo(end) < 0);
            if (known.isPresent()) {
                Duration step = known.get().minus(from);
                for (int k = first; k < i; k++) {
                    Duration share = step.multipliedBy(k - first).dividedBy(i - first);
                    timed.add(new Word(words.get(k).text(), from.plus(share)));
                }
                from = known.get();
                first = i;
            }
        }
        return List.copyOf(timed);
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }
}
