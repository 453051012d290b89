package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;
import org.misecue.page.Pages;
import org.misecue.quantity.QuantityWriter;

/** The comparison as a page for the producer: what differs first, then what to listen to, the rest folded away. */
public final class ComparePage {

    private ComparePage() {}

    /**
     * @param stills for a moment the path of its picture, relative to the page; moments without one show none
     * @param clips the same for the piece of film
     */
    public static String html(Comparison comparison, Map<Moment, String> stills, Map<Moment, String> clips) {
        return Pages.fill(
                "compare/verdicts.jte",
                Map.of("title", comparison.title(), "sections", sections(comparison, stills, clips)));
    }

    /** One group of rows under its heading; folded where nothing has to be decided. */
    public record Section(String heading, boolean folded, List<Row> rows) {}

    /** One written or unwritten thing with its moments. */
    public record Row(String what, String where, String reason, List<Quote> quotes) {}

    /** A moment with the deciding words apart, so that the page can mark them. */
    public record Quote(
            String time, String before, String deciding, String after, Optional<String> still, Optional<String> clip) {}

    private static List<Section> sections(
            Comparison comparison, Map<Moment, String> stills, Map<Moment, String> clips) {
        Rows rows = new Rows(comparison, stills, clips);
        List<Section> all = List.of(
                new Section("Differs from the recipe", false, rows.of(Verdict.DIFFERS)),
                new Section("Added on camera, not in the recipe", false, rows.unwritten()),
                new Section("Close, but not as written: listen and decide", false, rows.of(Verdict.APPROXIMATE)),
                new Section(
                        "Never said with an amount: the description must have it", false, rows.of(Verdict.UNSPOKEN)),
                new Section("Said as written", true, rows.of(Verdict.AGREES)));
        return all.stream().filter(section -> !section.rows().isEmpty()).toList();
    }

    private record Rows(Comparison comparison, Map<Moment, String> stills, Map<Moment, String> clips) {

        List<Row> of(Verdict verdict) {
            List<Row> rows = new ArrayList<>();
            comparison.written().stream()
                    .filter(line -> line.verdict() == verdict)
                    .map(line -> row(line.line().text(), line.component(), line.reason(), line.evidence()))
                    .forEach(rows::add);
            comparison.settings().stream()
                    .filter(setting -> setting.verdict() == verdict)
                    .map(setting -> row(CompareText.name(setting.setting()), "", setting.reason(), setting.evidence()))
                    .forEach(rows::add);
            return rows;
        }

        List<Row> unwritten() {
            return comparison.unwritten().stream()
                    .map(one -> row(
                            one.ingredient(),
                            "",
                            "Said: " + QuantityWriter.text(one.quantity()) + "; no line of the recipe has it.",
                            one.evidence()))
                    .toList();
        }

        private Row row(String what, String where, String reason, List<Evidence> evidence) {
            return new Row(
                    what, where, reason, evidence.stream().map(this::quote).toList());
        }

        private Quote quote(Evidence evidence) {
            String time = Clock.hms(evidence.moment().at());
            Optional<String> still = Optional.ofNullable(stills.get(evidence.moment()));
            Optional<String> clip = Optional.ofNullable(clips.get(evidence.moment()));
            int at = evidence.quote().indexOf(evidence.deciding());
            if (at < 0 || evidence.deciding().isEmpty()) {
                return new Quote(time, evidence.quote(), "", "", still, clip);
            }
            int end = at + evidence.deciding().length();
            return new Quote(
                    time,
                    evidence.quote().substring(0, at),
                    evidence.deciding(),
                    evidence.quote().substring(end),
                    still,
                    clip);
        }
    }
}
