package org.misecue.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;
import org.misecue.page.Pages;

/** The findings as a page for the producer, to work through on a screen or to print, sign and file. */
public final class ComparePage {

    private ComparePage() {}

    /**
     * @param stills for a moment the path of its picture, relative to the page; moments without one show none
     * @param clips the same for the piece of film
     * @param decisions what was decided, by what it is about
     */
    public static String html(
            Findings findings, Map<Moment, String> stills, Map<Moment, String> clips, Map<String, String> decisions) {
        List<Section> sections = findings.groups().stream()
                .map(group -> new Section(group, rows(group, stills, clips, decisions)))
                .toList();
        return Pages.fill(
                "compare/verdicts.jte",
                Map.of(
                        "undecided",
                        findings.undecided(decisions.keySet()).orElse(""),
                        "title",
                        findings.title(),
                        "sections",
                        sections,
                        "heardOtherwise",
                        findings.heardOtherwise(),
                        "source",
                        findings.source()));
    }

    /** One group of rows under its heading. */
    public record Section(Findings.Group group, List<Row> rows) {
        public Findings.Kind kind() {
            return group.kind();
        }
    }

    /** One finding with its moments. */
    public record Row(Finding finding, List<Quote> quotes, Optional<String> decision) {}

    /** A moment with the deciding words apart, so that the page can mark them. */
    public record Quote(
            String time,
            boolean shown,
            String before,
            String deciding,
            String after,
            Optional<String> still,
            Optional<String> clip) {

        /** What a click on the time opens. */
        public Optional<String> film() {
            return clip.or(() -> still);
        }
    }

    private static List<Row> rows(
            Findings.Group group,
            Map<Moment, String> stills,
            Map<Moment, String> clips,
            Map<String, String> decisions) {
        return group.findings().stream()
                .map(finding -> new Row(
                        finding,
                        finding.evidence().stream()
                                .map(evidence -> quote(
                                        evidence,
                                        Optional.ofNullable(stills.get(evidence.moment())),
                                        Optional.ofNullable(clips.get(evidence.moment()))))
                                .toList(),
                        Optional.ofNullable(decisions.get(finding.about()))))
                .toList();
    }

    private static Quote quote(Evidence evidence, Optional<String> still, Optional<String> clip) {
        return new Quote(
                Clock.hms(evidence.moment().at()),
                evidence.via() == Evidence.Via.SHOWN,
                evidence.before(),
                evidence.marked(),
                evidence.after(),
                still,
                clip);
    }
}
