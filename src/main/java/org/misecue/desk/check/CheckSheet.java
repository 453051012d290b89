package org.misecue.desk.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.decide.Docket;
import org.misecue.decide.DocketText;
import org.misecue.decide.Matter;
import org.misecue.narration.Clock;
import org.misecue.worktop.Worktop;

/**
 * What the page shows.
 *
 * @param summary how far it has come, in a sentence
 * @param undecided how many somebody has to decide on
 * @param sections in the order in which they are worked through
 * @param heardOtherwise sentences about words that somebody corrected
 */
public record CheckSheet(String summary, int undecided, List<Section> sections, List<String> heardOtherwise) {

    /** Rows under a heading; those that need nobody's decision are folded away. */
    public record Section(Findings.Kind kind, List<Row> rows) {

        public boolean isFolded() {
            return !kind.isOpen();
        }
    }

    /**
     * One finding.
     *
     * @param matter what is to be decided about it; empty where nothing is
     */
    public record Row(Finding finding, Optional<Matter> matter, List<Play> moments) {

        public String standing() {
            return matter.map(DocketText::standing).orElse("");
        }

        public boolean isOpen() {
            return matter.filter(one -> one.state().isOpen()).isPresent();
        }

        public boolean isDecided() {
            return matter.filter(one -> one.decision().isPresent()).isPresent();
        }

        public String mark() {
            return matter.map(Matter::mark).orElse("");
        }
    }

    /**
     * A moment that can be played.
     *
     * @param film the film's file name; empty where there is none of it
     */
    public record Play(Evidence evidence, Optional<String> film) {

        public String time() {
            return Clock.hms(evidence.moment().at());
        }

        /** Seconds on the film's clock. */
        public String seconds() {
            return String.valueOf(evidence.moment().at().toMillis() / 1000.0);
        }

        public boolean isShown() {
            return evidence.via() == Evidence.Via.SHOWN;
        }
    }

    static CheckSheet of(Worktop worktop) {
        Findings findings = worktop.findings();
        Docket docket = worktop.docketAnew();
        Map<String, Matter> matters =
                docket.matters().stream().collect(Collectors.toMap(Matter::about, Function.identity()));
        List<Section> sections = findings.groups().stream()
                .map(group -> new Section(
                        group.kind(),
                        group.findings().stream()
                                .map(finding -> row(worktop, finding, matters))
                                .toList()))
                .toList();
        return new CheckSheet(
                DocketText.summary(docket), docket.undecided().size(), sections, findings.heardOtherwise());
    }

    private static Row row(Worktop worktop, Finding finding, Map<String, Matter> matters) {
        List<Play> moments = finding.evidence().stream()
                .map(one -> new Play(
                        one,
                        worktop.filmOf(one.moment().source())
                                .map(Path::getFileName)
                                .map(Path::toString)))
                .toList();
        return new Row(finding, Optional.ofNullable(matters.get(finding.about())), moments);
    }

    /** The row of a finding, and of what kind it is. */
    Optional<Section> only(String about) {
        return sections.stream()
                .flatMap(section -> section.rows().stream()
                        .filter(row -> row.finding().about().equals(about))
                        .map(row -> new Section(section.kind(), List.of(row))))
                .findFirst();
    }
}
