package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/**
 * Whether a figure for a setting is told of this bake. Speakers stray into other kitchens and other years with their times
 * and ovens more than with their flour, and come back without a sign; a story has its own figure, and the next is ours.
 */
final class HereAndNow {

    private static final int CLAUSE = 11;
    private static final int BEHIND = 7;
    private static final Set<String> SPEAKER =
            Words.set("i i've i'm i'd we we've we're me mine us ours you you've you're yours today");
    private static final Set<String> THEIRS = Set.of("hers", "theirs");
    private static final Set<String> THEIR = Set.of("her", "his", "their");
    private static final Set<String> BEHIND_HIS = Set.of("for", "at", "in", "on", "until");
    private static final Set<String> SUBJECTS = Set.of("i", "we", "you", "he", "she", "they", "it", "that");
    private static final Set<String> COPULAS = Set.of("is", "was", "are", "were", "had");

    private final Hearing heard;

    HereAndNow(Hearing heard) {
        this.heard = heard;
    }

    /** An aside whose story, condition or other time was about another figure. */
    boolean isAfterAll(SpokenQuantity said) {
        if (!heard.on(Mechanism.HERE_AND_NOW)) {
            return false;
        }
        if (said.isAside(Aside.Kind.OTHER_TIME) && isToldOfNext(said)) {
            return true;
        }
        boolean story = said.isAside(Aside.Kind.OTHER_PEOPLE) || said.isAside(Aside.Kind.OTHER_TIME);
        if (!story && !said.isAside(Aside.Kind.ALTERNATIVE)) {
            return false;
        }
        return heard.quantityBefore(said.start())
                .filter(other -> other.aside().equals(said.aside()))
                .filter(other -> story ? isBack(other, said) : isAnswered(other, said))
                .isPresent();
    }

    /** "my sister bakes hers for forty minutes, I bake mine twenty five". */
    private boolean isBack(SpokenQuantity other, SpokenQuantity said) {
        return dimension(other).equals(dimension(said)) && speakerWithin(other.end(), said.start());
    }

    private boolean speakerWithin(int from, int to) {
        for (int at = from; at < to; at++) {
            if (SPEAKER.contains(heard.words.text(at))
                    || heard.words.text(at).equals("this")
                    || heard.words.text(at).equals("here")) {
                return true;
            }
        }
        return false;
    }

    /** "if you've no fan that's one eighty, and they get thirty minutes": the condition was for the heat. */
    private boolean isAnswered(SpokenQuantity other, SpokenQuantity said) {
        boolean goesOn = heard.words.text(other.end()).equals("and");
        return !dimension(other).equals(dimension(said)) && (goesOn || !HeatAndTime.isTimeBesideHeat(said, heard));
    }

    private static Optional<Dimension> dimension(SpokenQuantity said) {
        return said.unit().map(Unit::dimension);
    }

    /** "it's thirty minutes, last year was fifty", "for an hour, I used to skip that": another clause begins. */
    private boolean isToldOfNext(SpokenQuantity said) {
        if (heard.phrases.within(Kind.OTHER_TIME, said.start() - CLAUSE, said.start())) {
            return false;
        }
        for (int at = said.end(); at < said.end() + BEHIND; at++) {
            int end = heard.phrases.endAt(Kind.OTHER_TIME, at).orElse(at);
            if (end > at) {
                return COPULAS.contains(heard.words.text(end)) || SUBJECTS.contains(heard.words.text(at - 1));
            }
        }
        return false;
    }

    /** "my sister leaves hers three hours", "she'd had her oven at two hundred". */
    boolean isOfOthers(SpokenQuantity said) {
        int from = heard.on(Mechanism.HERE_AND_NOW) ? Math.max(0, said.start() - CLAUSE) : said.start();
        for (int at = said.start() - 1; at >= from; at--) {
            String word = heard.words.text(at);
            if (SPEAKER.contains(word)) {
                return false;
            }
            if (THEIRS.contains(word)
                    || (THEIR.contains(word)
                            && heard.phrases.endAt(Kind.OF_THE_OVEN, at + 1).isPresent())
                    || (word.equals("his") && BEHIND_HIS.contains(heard.words.text(at + 1)))
                    || heard.phrases.endAt(Kind.OTHER_PEOPLE, at).isPresent()) {
                return true;
            }
        }
        return false;
    }
}
