package org.misecue.decide;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** One verdict: what is written, and the moments. */
    public record Line(String what, String moments) {}

    /** One decided or open matter. */
    public record Row(String what, String reason, String moments, String standing, boolean open) {}

    /** Verdicts of one sort that nobody has to decide on, in two columns: the second of a pair is empty at an odd end. */
    public record Sort(String heading, List<List<Line>> pairs) {}

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
            if (!group.kind().isOpen()) {
                sorts.add(new Sort(
                        group.kind().heading() + " (" + group.findings().size() + ")", pairs(group)));
            }
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
                        "remarks",
                                Stream.concat(findings.heardOtherwise().stream(), remarks.stream())
                                        .toList()));
    }

    private static Row row(Matter matter) {
        return new Row(
                matter.finding().what(),
                matter.finding().reason(),
                moments(matter.finding()),
                DocketText.standing(matter),
                matter.state() != State.SETTLED);
    }

    private static List<List<Line>> pairs(Findings.Group group) {
        List<Line> lines = group.findings().stream()
                .map(finding -> new Line(finding.what(), moments(finding)))
                .toList();
        int half = (lines.size() + 1) / 2;
        return IntStream.range(0, half)
                .mapToObj(i -> List.of(lines.get(i), half + i < lines.size() ? lines.get(half + i) : new Line("", "")))
                .toList();
    }

    private static String moments(Finding finding) {
        return finding.evidence().stream()
                .map(one -> Clock.hms(one.moment().at()))
                .distinct()
                .limit(4)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }
}
