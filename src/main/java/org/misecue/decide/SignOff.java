package org.misecue.decide;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.episode.InputFile;
import org.misecue.narration.Clock;
import org.misecue.page.Pages;

/**
 * The sheet that a producer signs and files: what the recipe and the film were when they were compared, every verdict, every
 * decision, and what is still open. It says whether the episode is ready; it never says so before everything is decided and
 * done.
 */
public final class SignOff {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

    private SignOff() {}

    /** One verdict: what is written, its verdict, and the moments. */
    public record Line(String what, String verdict, String moments) {}

    /** One decided or open matter. */
    public record Row(String what, String reason, String standing, boolean open) {}

    /** Verdicts of one sort. */
    public record Sort(String heading, List<Line> lines) {}

    /**
     * The sheet as a page, to be printed.
     *
     * @param on the day that stands on it
     * @param remarks what else is to be kept with it, such as a reason for publishing in spite of something open
     */
    public static String html(
            Findings findings, Docket docket, List<InputFile> inputs, LocalDate on, List<String> remarks) {
        List<Row> rows = docket.matters().stream().map(SignOff::row).toList();
        List<Sort> sorts = new ArrayList<>();
        for (Findings.Group group : findings.groups()) {
            sorts.add(new Sort(
                    group.kind().heading() + " (" + group.findings().size() + ")",
                    group.findings().stream().map(SignOff::line).toList()));
        }
        return Pages.fill(
                "decide/sign-off.jte",
                Map.of(
                        "title", docket.title(),
                        "day", DAY.format(on),
                        "clean", docket.isClean(),
                        "summary", DocketText.summary(docket),
                        "counts", findings.summary(),
                        "rows", rows,
                        "sorts", sorts,
                        "inputs", inputs,
                        "remarks", remarks));
    }

    private static Row row(Matter matter) {
        return new Row(
                matter.finding().what(),
                matter.finding().reason(),
                DocketText.standing(matter),
                matter.state() != State.SETTLED);
    }

    private static Line line(Finding finding) {
        String moments = finding.evidence().stream()
                .map(one -> Clock.hms(one.moment().at()))
                .distinct()
                .limit(4)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        return new Line(finding.what(), finding.verdict(), moments);
    }
}
