package org.misecue.desk.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.decide.Docket;
import org.misecue.decide.DocketText;
import org.misecue.decide.Matter;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.narration.Narration;
import org.misecue.worktop.Worktop;

/**
 * What the page shows.
 *
 * @param mark changes with what was found, and not with what was decided
 * @param filmed whether there is anything to hold the recipe against
 * @param summary how far it has come, in a sentence
 * @param undecided how many somebody has to decide on
 * @param sections in the order in which they are worked through
 * @param heard what somebody corrected by ear
 * @param narrations the files in which words can be corrected
 * @param law by what allergens are told; empty where none are
 */
public record CheckSheet(
        String mark,
        boolean filmed,
        String summary,
        int undecided,
        List<Section> sections,
        List<Heard> heard,
        List<String> narrations,
        String law) {

    /** Rows under a heading; those that need no look are folded away. */
    public record Section(Findings.Kind kind, List<Row> rows) {

        public boolean isFolded() {
            return kind == Findings.Kind.AGREES;
        }
    }

    /**
     * One finding.
     *
     * @param matter what is to be decided about it; empty where nothing is
     */
    public record Row(Finding finding, Optional<Matter> matter, List<Play> moments) {

        public String id() {
            return Labels.id(finding.about());
        }

        public String standing() {
            return matter.map(DocketText::standing).orElse("");
        }

        public boolean isOpen() {
            return matter.filter(one -> one.state().isOpen()).isPresent();
        }

        public boolean isDecided() {
            return matter.flatMap(Matter::decision).isPresent();
        }

        public boolean isDecided(Choice choice) {
            return matter.flatMap(Matter::decision)
                    .filter(one -> one.choice() == choice)
                    .isPresent();
        }

        public String note() {
            return matter.flatMap(Matter::decision).map(Decision::note).orElse("");
        }

        /** As the row's form carries it. */
        public String seen() {
            return matter.map(Matter::seen).map(Object::toString).orElse("");
        }
    }

    static CheckSheet of(Worktop worktop) {
        Findings findings = worktop.findings();
        Docket docket = worktop.docket();
        Map<String, Matter> matters =
                docket.matters().stream().collect(Collectors.toMap(Matter::about, Function.identity()));
        List<Heard> heard = Heard.all(worktop);
        List<Section> sections = findings.groups().stream()
                .map(group -> new Section(
                        group.kind(),
                        group.findings().stream()
                                .map(finding -> row(worktop, finding, matters, heard))
                                .toList()))
                .toList();
        return new CheckSheet(
                UUID.nameUUIDFromBytes((findings.toString() + heard).getBytes(UTF_8))
                        .toString(),
                worktop.filmed(),
                DocketText.summary(docket),
                docket.undecided().size(),
                sections,
                heard,
                worktop.narrations().stream().map(Narration::source).toList(),
                findings.source());
    }

    private static Row row(Worktop worktop, Finding finding, Map<String, Matter> matters, List<Heard> heard) {
        List<Play> moments = finding.evidence().stream()
                .map(one -> Play.of(worktop, one, heard))
                .toList();
        return new Row(finding, Optional.ofNullable(matters.get(finding.about())), moments);
    }

    private Stream<Row> rows() {
        return sections.stream().flatMap(section -> section.rows().stream());
    }

    /** @throws Refusal if nothing on the page is about this */
    Row row(String about) {
        return rows().filter(row -> row.finding().about().equals(about))
                .findFirst()
                .orElseThrow(() -> new Refusal(409, "“" + about + "” is no longer on the page; load it again."));
    }

    /** @param seen what the rows of an older page carry */
    List<Row> decidedOtherwise(Collection<String> seen) {
        return rows().filter(row -> row.matter().isPresent() && !seen.contains(row.seen()))
                .toList();
    }
}
