package org.misecue.narration;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words that a recogniser misheard, with what somebody heard there. The narration's file stays as it is.
 *
 * @param at when the first of the words begins, on the narration's clock
 * @param was the words as the recogniser wrote them
 * @param heard what is really said; empty where nothing is
 */
public record Mend(Duration at, String was, String heard) {

    /**
     * What somebody changed in a stretch of words; empty where they changed nothing but capitals and punctuation.
     *
     * @param written the words as they are
     * @param heard all of them as they should be
     */
    public static Optional<Mend> between(List<Word> written, String heard) {
        List<String> now = split(heard);
        int most = Math.min(written.size(), now.size());
        int from = 0;
        while (from < most && isSame(written.get(from).text(), now.get(from))) {
            from++;
        }
        int behind = 0;
        while (behind < most - from
                && isSame(written.get(written.size() - 1 - behind).text(), now.get(now.size() - 1 - behind))) {
            behind++;
        }
        if (written.isEmpty() || from == written.size() && from == now.size()) {
            return Optional.empty();
        }
        if (from + behind == written.size()) {
            // Words that are only put in take one along that is there, to have a place.
            from = Math.max(0, from - 1);
            behind = Math.min(behind, written.size() - 1 - from);
        }
        List<Word> was = written.subList(from, written.size() - behind);
        return Optional.of(new Mend(
                was.get(0).at(),
                was.stream().map(Word::text).collect(Collectors.joining(" ")),
                String.join(" ", now.subList(from, now.size() - behind))));
    }

    /**
     * The same as a change of all that an earlier one put in, if it changes some of that; itself if it does not.
     *
     * @param words of the narration, with the earlier one put in
     */
    public Mend over(Mend earlier, List<Word> words) {
        List<Duration> times = words.stream().map(Word::at).toList();
        int start = times.indexOf(earlier.at);
        int from = times.indexOf(at) - start;
        List<String> put = earlier.heardWords();
        int to = from + split(was).size();
        if (start < 0 || from < 0 || to > put.size()) {
            return this;
        }
        String whole = Stream.of(put.subList(0, from), heardWords(), put.subList(to, put.size()))
                .flatMap(List::stream)
                .collect(Collectors.joining(" "));
        return new Mend(earlier.at, String.join(" ", put), whole);
    }

    /** The same on another clock. */
    public Mend moved(Duration offset) {
        return new Mend(at.plus(offset), was, heard);
    }

    /** Whether its words are those that another one put in. */
    public boolean corrects(Mend earlier) {
        return at.equals(earlier.at) && wasWords().equals(plain(earlier.heard));
    }

    public boolean changesAnything() {
        return !wasWords().equals(plain(heard));
    }

    private static boolean isSame(String word, String other) {
        return word.equals(other) || plain(word).equals(plain(other));
    }

    List<String> wasWords() {
        return plain(was);
    }

    List<String> heardWords() {
        return split(heard);
    }

    private static List<String> split(String text) {
        return Stream.of(text.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Capitals and punctuation tell no words apart. */
    static List<String> plain(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                .map(word -> word.replaceAll("^[^\\p{L}\\p{N}]+|[^\\p{L}\\p{N}]+$", ""))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
