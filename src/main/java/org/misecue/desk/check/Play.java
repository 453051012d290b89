package org.misecue.desk.check;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.misecue.compare.Evidence;
import org.misecue.episode.Corrections;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;
import org.misecue.worktop.Stretch;
import org.misecue.worktop.Worktop;

/**
 * A moment of a row, which can be played and whose words can be corrected.
 *
 * @param film the film's file name; empty where there is none of it
 * @param around what is said there; empty for what is shown
 * @param heard what somebody corrected in it
 */
public record Play(Evidence evidence, Optional<String> film, Optional<Stretch> around, List<Heard> heard) {

    static Play of(Worktop worktop, Evidence evidence, List<Heard> all) {
        Moment moment = evidence.moment();
        Optional<Stretch> around = isShown(evidence) ? Optional.empty() : around(worktop, moment);
        return new Play(
                evidence,
                film(worktop, moment.source()),
                around,
                all.stream()
                        .filter(one -> around.filter(one::isWithin).isPresent())
                        .toList());
    }

    private static Optional<Stretch> around(Worktop worktop, Moment moment) {
        return worktop.narrations().stream()
                .filter(one -> one.source().equals(moment.source()))
                .map(one -> Stretch.around(one, moment.at()))
                .filter(stretch -> !stretch.words().isEmpty())
                .findFirst();
    }

    /** The file name of the film on whose clock a narration runs. */
    public static Optional<String> film(Worktop worktop, String source) {
        return worktop.filmOf(source).map(Path::getFileName).map(Path::toString);
    }

    private static boolean isShown(Evidence evidence) {
        return evidence.via() == Evidence.Via.SHOWN;
    }

    public boolean isShown() {
        return isShown(evidence);
    }

    public String time() {
        return Clock.hms(evidence.moment().at());
    }

    /** On the film's clock. */
    public String seconds() {
        return seconds(evidence.moment().at());
    }

    /** "200.5". */
    public static String seconds(Duration at) {
        return String.valueOf(at.toMillis() / 1000.0);
    }

    /** As a form carries it, to the last fraction. */
    public static String exact(Duration at) {
        return Corrections.exact(at);
    }
}
