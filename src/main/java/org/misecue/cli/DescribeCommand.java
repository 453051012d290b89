package org.misecue.cli;

import org.misecue.publish.Description;
import org.misecue.publish.SchemaOrg;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The text for the description box. */
@Command(
        name = "describe",
        description = "Write the text for the description box; with --json the recipe as schema.org data.")
final class DescribeCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(names = "--html", description = "As a page with the data for search engines, out/recipe.html.")
    private boolean html;

    @Option(names = "--pdf", description = "To print: out/recipe.pdf.")
    private boolean pdf;

    DescribeCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        if (html) {
            made(worktop.episode().out(), "recipe.html", Publishing.page(worktop));
        }
        if (pdf) {
            made(worktop.episode().out(), "recipe.pdf", Publishing.print(worktop));
        }
        if (to.json) {
            hand(SchemaOrg.json(worktop.filmedEdition()), to);
            return ExitCode.OK;
        }
        Description description = worktop.description();
        tell(description.notes());
        if (!html && !pdf || to.out != null) {
            hand(description.text(), to);
        }
        return ExitCode.OK;
    }
}
