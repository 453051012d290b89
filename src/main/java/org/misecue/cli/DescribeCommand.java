package org.misecue.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.publish.Description;
import org.misecue.worktop.Release;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What goes out with the film: text, page, data. */
@Command(
        name = "describe",
        description = {
            "Write the text for the description box; with --json the recipe as schema.org data.",
            "While something that differs is undecided it is a draft and says so, and --publish refuses it with exit code 1."
        })
final class DescribeCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(names = "--html", description = "As a page for the web, out/recipe.html, with the data in it.")
    private boolean html;

    @Option(names = "--pdf", description = "To print: out/recipe.pdf.")
    private boolean pdf;

    @Option(
            names = "--publish",
            description = "It goes out now: remember what is published, for corrections; refuse what is undecided.")
    private boolean publish;

    @Option(names = "--anyway", paramLabel = "REASON", description = "Publish in spite of what is undecided, and why.")
    private String anyway = "";

    @Option(
            names = "--by",
            paramLabel = "NAME",
            defaultValue = "${sys:user.name}",
            description = "Who publishes; this computer's user where nobody is named.")
    private String by = "";

    @Nullable
    @Option(names = "--on", paramLabel = "DAY", description = "When, such as 2026-05-20; today where it is left out.")
    private String on;

    @Option(
            names = "--erratum",
            description = "The correction for viewers, if what was published is not what is written now.")
    private boolean erratum;

    DescribeCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        if (!anyway.isBlank() && !publish) {
            throw new BadInput(Place.of("--anyway"), "a reason belongs to --publish; add it, or leave the reason out.");
        }
        Worktop worktop = open();
        LocalDate day = day();
        Release release = new Release(worktop);
        tell(worktop.recipe().notes());
        if (erratum) {
            hand(release.erratum(day).text(), to);
            return ExitCode.OK;
        }
        if (publish && release.isBlocked() && anyway.isBlank()) {
            stage.err()
                    .println("misecue: " + release.obstacle()
                            + ". Decide with misecue decide, or give a reason with --anyway.");
            return ExitCode.DIFFERS;
        }
        Description description = worktop.description();
        tell(description.notes());
        tell(worktop.offerNotes());
        show(worktop, release, description);
        if (publish) {
            release.remember(day, by.strip(), release.isBlocked() ? anyway.strip() : "");
        }
        return ExitCode.OK;
    }

    private void show(Worktop worktop, Release release, Description description) {
        if (html) {
            made(worktop.episode().out(), "recipe.html", worktop.recipePage());
        }
        if (pdf) {
            made(worktop.episode().out(), "recipe.pdf", worktop.recipePrint());
        }
        if (to.json) {
            hand(worktop.recipeData(), to);
        } else if (!html && !pdf || to.out != null) {
            hand((publish ? "" : release.draftHead()) + description.text(), to);
        }
    }

    private LocalDate day() {
        if (on == null) {
            return LocalDate.now();
        }
        try {
            return LocalDate.parse(on);
        } catch (DateTimeParseException e) {
            throw new BadInput(Place.of("--on"), "expected a day such as 2026-05-20, not “" + on + "”.", e);
        }
    }
}
