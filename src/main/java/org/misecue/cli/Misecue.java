package org.misecue.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Objects;

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
            stage.out().println("misecue " + version());
            stage.out().flush();
            return ExitCode.OK;
        }
        return CommandTable.run(args, stage);
    }

    static String version() {
        try (InputStream in = Misecue.class.getResourceAsStream("version.txt")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
