package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.misecue.narration.Word;

/**
 * A passage with the first words of the next cue, so that words on both sides of a cue's border are found together. Where
 * a recogniser cuts is an accident.
 *
 * @param text the passage's own words and those that follow, one space between them
 * @param ownLength characters of the text that are the passage's own
 * @param textEnd when the cue ends whose words come last
 * @param times when each word of the text begins, in milliseconds; empty where that is not known
 */
record Window(Passage passage, String text, int ownLength, Duration textEnd, List<Long> times) {

    /** How many words of the next cue are looked at. */
    private static final int WORDS_OVER_THE_BORDER = 8;

    /** After a longer pause the next cue has nothing to do with this one. */
    private static final Duration LONGEST_PAUSE = Duration.ofSeconds(5);

    private static final Comparator<Passage> IN_ORDER = Comparator.comparing(Passage::kind)
            .thenComparing(Passage::source)
            .thenComparing(Passage::start)
            .thenComparing(Passage::step)
            .thenComparing(Passage::text);

    static List<Window> over(List<Passage> passages) {
        List<Passage> ordered = passages.stream().sorted(IN_ORDER).toList();
        List<Window> windows = new ArrayList<>();
        for (int i = 0; i < ordered.size(); i++) {
            Passage passage = ordered.get(i);
            boolean goesOn = i + 1 < ordered.size() && goesOn(passage, ordered.get(i + 1));
            windows.add(goesOn ? reachingInto(passage, ordered.get(i + 1)) : alone(passage));
        }
        return windows;
    }

    private static boolean goesOn(Passage passage, Passage next) {
        return passage.kind() == Passage.Kind.NARRATION
                && next.kind() == Passage.Kind.NARRATION
                && passage.source().equals(next.source())
                && next.start().minus(passage.end()).compareTo(LONGEST_PAUSE) <= 0
                && !passage.words().isEmpty()
                && !next.words().isEmpty();
    }

    private static Window alone(Passage passage) {
        Pieces own = new Pieces();
        own.addAll(passage.words());
        String text = passage.words().isEmpty()
                ? String.join(" ", passage.text().strip().split("\\s+"))
                : own.text.toString();
        return new Window(passage, text, text.length(), passage.end(), own.times);
    }

    private static Window reachingInto(Passage passage, Passage next) {
        Pieces all = new Pieces();
        all.addAll(passage.words());
        int ownLength = all.text.length();
        all.addAll(next.words()
                .subList(0, Math.min(WORDS_OVER_THE_BORDER, next.words().size())));
        return new Window(passage, all.text.toString(), ownLength, next.end(), all.times);
    }

    private static final class Pieces {
        final StringBuilder text = new StringBuilder();
        final List<Long> times = new ArrayList<>();

        void addAll(List<Word> spoken) {
            for (Word word : spoken) {
                String said = word.text().strip();
                if (said.chars().noneMatch(Character::isWhitespace)) {
                    add(said, word.at().toMillis());
                } else {
                    for (String piece : said.split("\\s+")) {
                        add(piece, word.at().toMillis());
                    }
                }
            }
        }

        private void add(String piece, long at) {
            if (!times.isEmpty()) {
                text.append(' ');
            }
            text.append(piece);
            times.add(at);
        }
    }
}
