package org.misecue.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.misecue.day.DayJson;
import org.misecue.day.DayPage;
import org.misecue.day.DayPlan;
import org.misecue.day.DayText;
import org.misecue.day.Standing;
import org.misecue.day.Timeline;
import org.misecue.episode.OutFolder;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.page.Pdf;
import org.misecue.worktop.FilmingDays;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The filming day. */
@Command(
        name = "day",
        description = {
            "Plan the filming day: who does what when, so that nobody waits for the oven.",
            "Who is there and what the clock asks stands under “day:” in episode.yaml."
        })
final class DayCommand extends EpisodeCommand {

    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("H:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(names = "--html", description = "As a page, out/day.html.")
    private boolean html;

    @Option(names = "--pdf", description = "To print and pin up: out/day.pdf.")
    private boolean pdf;

    @Option(names = "--svg", description = "The drawn day alone: out/day.svg.")
    private boolean svg;

    @Nullable
    @Option(names = "--now", paramLabel = "TIME", description = "Plan what is left from this time on, such as 11:20.")
    private String now;

    @Nullable
    @Option(
            names = "--done",
            paramLabel = "ROWS",
            description = "The rows of the call sheet that are finished, such as 1-6,9; with --now.")
    private String done;

    @Nullable
    @Option(names = "--psplib", hidden = true, paramLabel = "FILE", description = "Solve a published problem instead.")
    private Path psplib;

    DayCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        if (psplib != null) {
            hand(PublishedProblem.solve(stage.resolve(psplib), psplib.toString()), to);
            return ExitCode.OK;
        }
        if (done != null && now == null) {
            throw new BadInput(Place.of("--done"), "say also what time it is, such as --now 11:20.");
        }
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        FilmingDays days = new FilmingDays(worktop, this::progress);
        Optional<Standing> standing = Optional.ofNullable(now).map(clock -> days.standing(time(clock), rows()));
        DayPlan plan = standing.map(days::replan).orElseGet(days::plan);
        tell(plan.notes());
        if (standing.isPresent()) {
            days.keepLate(plan);
        } else {
            days.keep(plan);
        }
        show(worktop.episode().out(), plan, standing.map(Standing::now));
        return ExitCode.OK;
    }

    private void show(OutFolder out, DayPlan plan, Optional<LocalDateTime> at) {
        if (html) {
            made(out, "day.html", DayPage.html(plan, at));
        }
        if (pdf) {
            made(out, "day.pdf", Pdf.of(DayPage.html(plan, at)));
        }
        if (svg) {
            made(out, "day.svg", Timeline.svg(plan, at));
        }
        if (to.json) {
            hand(DayJson.of(plan), to);
        } else if (!html && !pdf && !svg || to.out != null) {
            hand(DayText.of(plan), to);
        }
    }

    private Set<Integer> rows() {
        return done == null ? Set.of() : RowNumbers.of("--done", done);
    }

    private static LocalTime time(String clock) {
        try {
            return LocalTime.parse(clock, CLOCK);
        } catch (DateTimeParseException e) {
            throw new BadInput(Place.of("--now"), "expected a time of the day such as 11:20, not “" + clock + "”.", e);
        }
    }
}
