package org.misecue.worktop;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.misecue.compare.Finding;
import org.misecue.decide.Docket;
import org.misecue.decide.Matter;
import org.misecue.decide.SignOff;
import org.misecue.episode.InputFiles;
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
        remember(on, who, anyway, before -> {});
    }

    /** @param look throws where what went out before is not what somebody has seen; then nothing is remembered */
    public void remember(LocalDate on, String who, String anyway, Consumer<List<Publication>> look) {
        new Publications(worktop.episode()).add(publication(on, who, anyway), look);
    }

    /** What keeps it from going out. */
    public List<Matter> blocking() {
        return docket.blocking();
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

    /**
     * The sheet to sign and to file.
     *
     * @param progress takes what is being done
     */
    public String signOff(LocalDate on, Consumer<String> progress) {
        return SignOff.html(
                worktop.findings(),
                docket,
                InputFiles.of(worktop.episode(), file -> progress.accept("Reading " + file)),
                on,
                remarks());
    }

    /** Why something went out that was not decided. */
    private List<String> remarks() {
        return new Publications(worktop.episode())
                .read().stream()
                        .filter(one -> !one.anyway().isEmpty())
                        .map(one -> "Published on %s by %s with something undecided, because: %s"
                                .formatted(one.on(), one.who(), one.anyway()))
                        .toList();
    }

    private Publication publication(LocalDate on, String who, String anyway) {
        return Released.of(worktop.published(), worktop.kitchen(), on, who, anyway);
    }
}
