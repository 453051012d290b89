package org.misecue.cli;

import java.nio.file.Path;
import org.misecue.worktop.Version;

/** The program: {@code misecue COMMAND …}. */
public final class Misecue {

    private Misecue() {}

    public static void main(String[] args) {
        String rehearsal = System.getProperty("misecue.rehearsal");
        if (rehearsal != null) {
            int worst = Rehearsal.run(Path.of(rehearsal));
            System.exit(worst > ExitCode.DIFFERS ? worst : ExitCode.OK);
        }
        System.exit(run(args, Stage.ofProcess()));
    }

    /** @return one of {@link ExitCode} */
    public static int run(String[] args, Stage stage) {
        if (args.length == 1 && (args[0].equals("--version") || args[0].equals("-V"))) {
            // Answered before any command is set up: scripts ask this often.
            stage.out().println("misecue " + Version.current());
            stage.out().flush();
            return ExitCode.OK;
        }
        return CommandTable.run(args, stage);
    }
}
