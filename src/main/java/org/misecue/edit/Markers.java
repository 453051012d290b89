package org.misecue.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.misecue.compare.Evidence;
import org.misecue.decide.Docket;
import org.misecue.decide.Matter;
import org.misecue.decide.State;
import org.misecue.episode.Choice;
import org.misecue.publish.Chapter;

/** The places of a narration that the editor has to find again: where steps begin, what is wrong, what was decided. */
public final class Markers {

    private Markers() {}

    /**
     * @param isHere tells the sources whose clock is the film's
     * @param steps where the steps begin
     */
    public static List<Marker> of(Docket docket, List<Chapter> steps, Predicate<String> isHere) {
        List<Marker> markers = new ArrayList<>();
        steps.forEach(step -> markers.add(new Marker(step.start(), Marker.Kind.STEP, line(step.title()), "")));
        for (Matter matter : docket.matters()) {
            matter.finding().evidence().stream()
                    .map(Evidence::moment)
                    .filter(moment -> isHere.test(moment.source()))
                    .distinct()
                    .forEach(moment -> kind(matter)
                            .ifPresent(kind -> markers.add(
                                    new Marker(moment.at(), kind, line(matter.about()), line(comment(matter))))));
        }
        return List.copyOf(markers);
    }

    /** Nothing is left to do at what is settled. */
    private static Optional<Marker.Kind> kind(Matter matter) {
        if (matter.state().isOpen()) {
            return Optional.of(matter.kind().differs() ? Marker.Kind.DIFFERS : Marker.Kind.LISTEN);
        }
        return matter.decision()
                .filter(any -> matter.state() == State.TO_DO)
                .flatMap(one -> one.choice() == Choice.PICKUP
                        ? Optional.of(Marker.Kind.PICKUP)
                        : one.choice() == Choice.COVER ? Optional.of(Marker.Kind.COVER) : Optional.empty());
    }

    private static String comment(Matter matter) {
        String note = matter.decision()
                .map(one -> one.note())
                .filter(text -> !text.isEmpty())
                .map(text -> " " + text)
                .orElse("");
        return matter.finding().what() + ": " + matter.finding().reason() + note;
    }

    /** What goes into a list has no line breaks. */
    private static String line(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    }
}
