package org.misecue.worktop;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.misecue.compare.Finding;
import org.misecue.decide.Docket;
import org.misecue.decide.Matter;
import org.misecue.episode.Publication;
import org.misecue.episode.Publications;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.publish.Erratum;
import org.misecue.publish.Released;

/** Whether a recipe may go out to viewers, and what is remembered of it once it has. */
public final class Release {

    private static final int MOST_NAMED = 3;

    private final Worktop worktop;
    private final Docket docket;

    public Release(Worktop worktop) {
        this.worktop = worktop;
        this.docket = worktop.docket();
    }

    public boolean isBlocked() {
        return !docket.blocking().isEmpty();
    }

    /** "2 matters keep this from being published: cake: unsalted butter, added: ground cardamom". */
    public String obstacle() {
        List<Matter> blocking = docket.blocking();
        String named = blocking.stream().limit(MOST_NAMED).map(Matter::about).collect(Collectors.joining("; "));
        String more = blocking.size() > MOST_NAMED ? "; and " + (blocking.size() - MOST_NAMED) + " more" : "";
        return (blocking.size() == 1 ? "1 matter keeps" : blocking.size() + " matters keep")
                + " this from being published: " + named + more;
    }

    /** The head of a text that may not go out as it is; empty for one that may. */
    public String draftHead() {
        return isBlocked() ? "DRAFT – NOT FOR PUBLISHING. " + obstacle() + ".\n\n" : "";
    }

    /** @param anyway why it goes out in spite of what is undecided; empty where nothing is */
    public void remember(LocalDate on, String who, String anyway) {
        new Publications(worktop.episode()).add(publication(on, who, anyway));
    }

    /** @throws BadInput if nothing was published yet */
    public Erratum erratum(LocalDate on) {
        Publication then = new Publications(worktop.episode())
                .last()
                .orElseThrow(
                        () -> new BadInput(
                                Place.of(".misecue/published.yaml"),
                                "nothing is known to have been published; when a text goes out, tell it with describe --publish."));
        List<Finding> findings = worktop.findings().groups().stream()
                .flatMap(group -> group.findings().stream())
                .toList();
        return Erratum.of(then, publication(on, "", ""), findings);
    }

    private Publication publication(LocalDate on, String who, String anyway) {
        return Released.of(worktop.published(), worktop.kitchen(), on, who, anyway);
    }
}
