package org.misecue.cli;

import org.misecue.publish.Description;
import org.misecue.publish.SchemaOrg;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The text for the description box. */
@Command(
        name = "describe",
        description = "Write the text for the description box; with --json the recipe as schema.org data.")
final class DescribeCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    DescribeCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        if (to.json) {
            hand(SchemaOrg.json(worktop.filmedEdition()), to);
            return ExitCode.OK;
        }
        Description description = worktop.description();
        tell(description.notes());
        hand(description.text(), to);
        return ExitCode.OK;
    }
}
