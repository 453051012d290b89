package org.misecue.decide;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;
import org.misecue.notice.Place;

/** Finds the matter that somebody means by a few words of it. */
public final class Chosen {

    private final Docket docket;

    public Chosen(Docket docket) {
        this.docket = docket;
    }

    /**
     * A decision on the matter that the words mean, resting on what is there now.
     *
     * @param option how the words were given, for the message
     * @throws BadInput if they mean none or several
     */
    public Decision decision(String option, Choice choice, String words, String who, LocalDateTime when, String note) {
        Matter matter = matter(option, words);
        return matter.decided(choice, who, when, note);
    }

    /** What the decision that the words mean is about, also of one whose matter is gone. */
    public String decided(String option, String words) {
        List<String> abouts = Stream.concat(
                        docket.matters().stream()
                                .filter(matter -> matter.decision().isPresent())
                                .map(Matter::about),
                        docket.done().stream().map(Decision::about))
                .toList();
        return one(option, words, abouts, "was decided");
    }

    private Matter matter(String option, String words) {
        String about =
                one(option, words, docket.matters().stream().map(Matter::about).toList(), "is to be decided");
        return docket.matters().stream()
                .filter(matter -> matter.about().equals(about))
                .findFirst()
                .orElseThrow();
    }

    private static String one(String option, String words, List<String> abouts, String what) {
        List<String> exact = abouts.stream()
                .filter(about -> about.equalsIgnoreCase(words.strip()))
                .toList();
        Set<String> wanted = words(words);
        List<String> meant = exact.isEmpty()
                ? abouts.stream()
                        .filter(about -> !wanted.isEmpty() && words(about).containsAll(wanted))
                        .toList()
                : exact;
        if (meant.size() == 1) {
            return meant.get(0);
        }
        if (meant.isEmpty()) {
            throw new BadInput(
                    Place.of(option),
                    abouts.isEmpty()
                            ? "nothing " + what + ", so nothing can be meant by “" + words + "”; leave it out."
                            : "nothing of “" + words + "” " + what + "; " + NearestWord.remedy(words, abouts));
        }
        throw new BadInput(
                Place.of(option),
                "“" + words + "” may mean "
                        + meant.stream().map(about -> "“" + about + "”").collect(Collectors.joining(" or "))
                        + "; write one of them whole.");
    }

    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
