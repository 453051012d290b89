package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.misecue.narration.Word;

/**
 * Passages that follow one another within some seconds, with the first words of the next, so that words on both sides of a
 * cue's border are found together. Where a recogniser cuts is an accident.
 *
 * @param passage all of them as one
 * @param text the passage's own words and those that follow, one space between them
 * @param ownLength characters of the text that are the passage's own
 * @param textEnd when the cue ends whose words come last
 * @param times when each word of the text begins; empty where that is not known
 * @param amounts that are said in the text
 */
record Window(Passage passage, String text, int ownLength, Duration textEnd, Times times, List<Amount> amounts) {

    /**
     * An amount that is said in the text.
     *
     * @param from its characters are {@code [from, to)} of the text
     * @param of the names of what it is an amount of, where that is known
     */
    record Amount(String key, int from, int to, Set<String> of) {}

    /** How many words of the next cue are looked at. */
    private static final int WORDS_OVER_THE_BORDER = 4;

    /** After a longer pause the next cue has nothing to do with this one. */
    private static final Duration LONGEST_PAUSE = Duration.ofSeconds(5);

    /** Moments that are nearer are shown as one, so nothing is lost by looking at their passages as one. */
    private static final Duration LONGEST = Folding.NEAR;

    private static final Comparator<Passage> IN_ORDER = Comparator.comparing(Passage::kind)
            .thenComparing(Passage::source)
            .thenComparing(Passage::start)
            .thenComparing(Passage::step)
            .thenComparing(Passage::text);

    static List<Window> over(List<Passage> passages) {
        List<Passage> ordered = inOrder(passages);
        List<Window> windows = new ArrayList<>();
        int from = 0;
        while (from < ordered.size()) {
            int to = from + 1;
            while (to < ordered.size() && isOne(ordered.get(from), ordered.get(to - 1), ordered.get(to))) {
                to++;
            }
            boolean goesOn = to < ordered.size() && goesOn(ordered.get(to - 1), ordered.get(to));
            windows.add(over(ordered.subList(from, to), ordered.subList(to, goesOn ? to + 1 : to)));
            from = to;
        }
        return windows;
    }

    /** They mostly are. */
    private static List<Passage> inOrder(List<Passage> passages) {
        for (int i = 1; i < passages.size(); i++) {
            Passage before = passages.get(i - 1);
            Passage next = passages.get(i);
            if (before.kind() != next.kind()
                    || !before.source().equals(next.source())
                    || before.start().compareTo(next.start()) >= 0) {
                return passages.stream().sorted(IN_ORDER).toList();
            }
        }
        return passages;
    }

    private static boolean isOne(Passage first, Passage last, Passage next) {
        return goesOn(last, next)
                && next.step() == first.step()
                && next.speaker().equals(first.speaker())
                && next.end().minus(first.start()).compareTo(LONGEST) <= 0;
    }

    private static boolean goesOn(Passage passage, Passage next) {
        return passage.kind() == Passage.Kind.NARRATION
                && next.kind() == Passage.Kind.NARRATION
                && passage.source().equals(next.source())
                && next.start().minus(passage.end()).compareTo(LONGEST_PAUSE) <= 0
                && !passage.words().isEmpty()
                && !next.words().isEmpty();
    }

    /** @param next what follows them, if anything does */
    private static Window over(List<Passage> passages, List<Passage> next) {
        Passage last = passages.get(passages.size() - 1);
        if (last.words().isEmpty()) {
            String text = String.join(" ", last.text().strip().split("\\s+"));
            return new Window(last, text, text.length(), last.end(), Times.NONE, List.of());
        }
        Pieces pieces = new Pieces();
        int[] firsts = new int[passages.size()];
        for (int i = 0; i < firsts.length; i++) {
            firsts[i] = pieces.words();
            pieces.add(passages.get(i).text(), passages.get(i).words());
        }
        int ownLength = pieces.text.length();
        for (Passage passage : next) {
            int first = pieces.words();
            int words = Math.min(WORDS_OVER_THE_BORDER, passage.words().size());
            pieces.add(beginning(passage.text(), words), passage.words().subList(0, words));
            pieces.place(passage.amounts().stream().map(SaidAmount::alone).toList(), first);
        }
        for (int i = 0; i < firsts.length; i++) {
            pieces.place(passages.get(i).amounts(), firsts[i]);
        }
        String text = pieces.text.toString();
        Duration textEnd = next.isEmpty() ? last.end() : next.get(0).end();
        Passage one = passages.size() == 1 ? last : one(passages, text.substring(0, ownLength));
        return new Window(one, text, ownLength, textEnd, pieces.times, pieces.amounts);
    }

    private static Passage one(List<Passage> passages, String text) {
        Passage first = passages.get(0);
        Set<Topic> topics = new HashSet<>();
        passages.forEach(passage -> topics.addAll(passage.topics()));
        return new Passage(
                first.kind(),
                first.source(),
                first.start(),
                passages.get(passages.size() - 1).end(),
                text,
                first.step(),
                first.speaker(),
                List.of(),
                List.of(),
                topics);
    }

    private static final class Pieces {
        final StringBuilder text = new StringBuilder(256);
        final Times times = new Times(64);

        final List<Amount> amounts = new ArrayList<>();

        int words() {
            return times.size();
        }

        /** @param said the words with a space between them */
        void add(String said, List<Word> words) {
            if (!text.isEmpty()) {
                text.append(' ');
            }
            text.append(said);
            times.add(words);
        }

        /** @param first the word at which the passage begins in which they are said */
        void place(List<SaidAmount> said, int first) {
            for (SaidAmount amount : said) {
                int from = first + amount.from();
                int to = Math.min(first + amount.to(), words());
                if (from < to) {
                    int end = to == words() ? text.length() : startOf(to) - 1;
                    amounts.add(new Amount(amount.key(), startOf(from), end, amount.of()));
                }
            }
        }

        private int startOf(int word) {
            return word == 0 ? 0 : endOf(text, word) + 1;
        }
    }

    /** So many words of a text. */
    private static String beginning(String text, int words) {
        return text.substring(0, endOf(text, words));
    }

    private static int endOf(CharSequence text, int words) {
        int left = words;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == ' ' && --left == 0) {
                return i;
            }
        }
        return text.length();
    }
}
