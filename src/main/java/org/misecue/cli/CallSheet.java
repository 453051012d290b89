package org.misecue.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.misecue.align.StepSpan;
import org.misecue.compare.Comparison;
import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.compare.Verdict;
import org.misecue.day.DayPlan;
import org.misecue.day.DayWords;
import org.misecue.decide.Docket;
import org.misecue.decide.DocketText;
import org.misecue.decide.Matter;
import org.misecue.episode.Episode;
import org.misecue.episode.FileKind;
import org.misecue.footage.FilmInfo;
import org.misecue.narration.Clock;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.prep.Job;
import org.misecue.prep.PrepWords;
import org.misecue.worktop.Worktop;

/** What each of the three people needs to know now, in about a dozen lines. */
final class CallSheet {

    private static final int MOST = 4;

    private final Worktop worktop;
    private final Map<Path, FilmInfo> films;
    private final Optional<DayPlan> day;
    private final List<String> lines = new ArrayList<>();

    private CallSheet(Worktop worktop, Map<Path, FilmInfo> films, Optional<DayPlan> day) {
        this.worktop = worktop;
        this.films = films;
        this.day = day;
    }

    /** @param day where it could be planned */
    static List<String> of(Worktop worktop, Map<Path, FilmInfo> films, Optional<DayPlan> day) {
        CallSheet sheet = new CallSheet(worktop, films, day);
        sheet.presenter();
        sheet.editor();
        sheet.producer();
        return sheet.lines;
    }

    private void section(String who, List<String> what, String rest) {
        lines.add(who);
        what.stream().limit(MOST).forEach(line -> lines.add("  " + line));
        if (what.size() > MOST) {
            lines.add("  … and " + (what.size() - MOST) + " more in " + rest);
        }
    }

    private void presenter() {
        List<Job> jobs = worktop.prep().jobs();
        section(
                "Presenter",
                jobs.isEmpty()
                        ? List.of("Nothing to start ahead.")
                        : jobs.stream().map(CallSheet::job).toList(),
                "out/prep.html");
        day.map(DayWords::summary)
                .ifPresent(sentences -> sentences.stream().limit(2).forEach(sentence -> lines.add("  " + sentence)));
    }

    private static String job(Job job) {
        return PrepWords.when(job) + ": " + job.what() + " – for " + job.forWhat();
    }

    private void editor() {
        List<String> what = new ArrayList<>();
        Episode episode = worktop.episode();
        if (worktop.narrations().isEmpty()) {
            what.add("No narration yet: put " + FileKind.NARRATIONS + " files into narration/.");
        }
        worktop.narrations().forEach(narration -> what.add(covered(narration)));
        if (films.isEmpty()) {
            what.add("No footage yet: no stills or clips.");
        }
        films.forEach((film, info) -> what.add(episode.name(film) + " runs " + Clock.hms(info.length())
                + info.picture()
                        .map(picture -> ", " + picture.width() + " × " + picture.height())
                        .orElse(", sound only")));
        section("Editor", what, "out/");
    }

    private String covered(Narration narration) {
        List<Cue> cues = narration.cues();
        Duration end =
                cues.isEmpty() ? Duration.ZERO : cues.get(cues.size() - 1).end();
        long on = worktop.alignment().spans().stream()
                .filter(span -> span.source().equals(narration.source()) && span.step() > 0)
                .map(StepSpan::step)
                .distinct()
                .count();
        String mended = narration.notes().isEmpty()
                ? ""
                : "; notes on it: " + narration.notes().size();
        return narration.source() + " runs " + Clock.hms(end) + " and touches " + on + " of "
                + worktop.recipe().steps().size() + " steps" + mended;
    }

    private void producer() {
        if (!worktop.filmed()) {
            section("Producer", List.of("Nothing to compare before there is a narration."), "");
            return;
        }
        Comparison comparison = worktop.comparison();
        Docket docket = worktop.docket();
        List<String> what = docket.matters().stream()
                .filter(matter -> matter.kind().differs())
                .map(CallSheet::matter)
                .toList();
        section(
                "Producer",
                what.isEmpty() ? List.of("Nothing said or shown differs from the recipe.") : what,
                "out/compare.html");
        lines.add("  " + DocketText.summary(docket));
        List<String> unspoken = comparison.written().stream()
                .filter(line -> line.verdict() == Verdict.UNSPOKEN)
                .map(line -> line.line().ingredient())
                .toList();
        if (!unspoken.isEmpty()) {
            lines.add("  Never said with an amount: " + String.join(", ", unspoken));
        }
    }

    private static String matter(Matter matter) {
        Finding finding = matter.finding();
        String head =
                switch (matter.kind()) {
                    case CLAIM -> "Claimed wrongly: ";
                    case ADDED -> "Not written: ";
                    default -> "Differs: ";
                };
        String reason = matter.kind() == Findings.Kind.ADDED ? "" : " – " + finding.reason();
        String decided = matter.decision()
                .filter(one -> !matter.state().isOpen())
                .map(one -> "; decided: " + one.choice().words())
                .orElse("");
        return head + finding.what() + reason + moments(finding.evidence()) + decided;
    }

    private static String moments(List<Evidence> evidence) {
        return evidence.isEmpty()
                ? ""
                : evidence.stream()
                        .map(one -> Clock.hms(one.moment().at()))
                        .distinct()
                        .collect(Collectors.joining(", ", " (", ")"));
    }
}
