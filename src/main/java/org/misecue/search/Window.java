package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.misecue.narration.Word;

/**
 * A passage with the first words of the next cue, so that words on both sides of a cue's border are found together. Where
 * a recogniser cuts is an accident.
 *
 * @param text the passage's own words and those that follow, one space between them
 * @param ownLength characters of the text that are the passage's own
 * @param textEnd when the cue ends whose words come last
 * @param times when each word of the text begins, in milliseconds; empty where that is not known
 * @param amounts those of both cues
 */
record Window(Passage passage, String text, int ownLength, Duration textEnd, List<Long> times, List<Amount> amounts) {

    /**
     * An amount that is said in the text.
     *
     * @param from its characters are {@code [from, to)} of the text
     * @param of the names of what it is an amount of, where that is known
     */
    record Amount(String key, int from, int to, Set<String> of) {}

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
        own.addAll(passage.words(), passage.amounts());
        String text = passage.words().isEmpty()
                ? String.join(" ", passage.text().strip().split("\\s+"))
                : own.text.toString();
        return new Window(passage, text, text.length(), passage.end(), own.times, own.amounts);
    }

    private static Window reachingInto(Passage passage, Passage next) {
        Pieces all = new Pieces();
        all.addAll(passage.words(), List.of());
        int ownLength = all.text.length();
        List<Word> following = next.words()
                .subList(0, Math.min(WORDS_OVER_THE_BORDER, next.words().size()));
        all.addAll(following, next.amounts().stream().map(SaidAmount::alone).toList());
        all.place(passage.amounts(), 0);
        return new Window(passage, all.text.toString(), ownLength, next.end(), all.times, all.amounts);
    }

    private static final class Pieces {
        final StringBuilder text = new StringBuilder();
        final List<Long> times = new ArrayList<>();

        final List<Amount> amounts = new ArrayList<>();
        private final List<Integer> starts = new ArrayList<>();
        private final List<Integer> ends = new ArrayList<>();

        void addAll(List<Word> spoken, List<SaidAmount> said) {
            int before = starts.size();
            for (Word word : spoken) {
                starts.add(times.isEmpty() ? 0 : text.length() + 1);
                add(word);
                ends.add(text.length());
            }
            place(said, before);
        }

        /** @param first the word at which the passage begins in which they are said */
        void place(List<SaidAmount> said, int first) {
            for (SaidAmount amount : said) {
                int from = first + amount.from();
                int to = Math.min(first + amount.to(), starts.size());
                if (from < to) {
                    amounts.add(new Amount(amount.key(), starts.get(from), ends.get(to - 1), amount.of()));
                }
            }
        }

        private void add(Word word) {
            String said = word.text().strip();
            if (said.chars().noneMatch(Character::isWhitespace)) {
                add(said, word.at().toMillis());
            } else {
                for (String piece : said.split("\\s+")) {
                    add(piece, word.at().toMillis());
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
