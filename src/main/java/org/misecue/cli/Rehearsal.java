package org.misecue.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Runs the everyday commands once, unseen, so that the build can keep their loaded classes in an archive and every later
 * start is quick.
 */
final class Rehearsal {

    private static final List<String> COMMANDS = List.of(
            "--version", "read EPISODE", "find butter -e EPISODE", "find butter --json -e EPISODE", "compare EPISODE");

    private Rehearsal() {}

    /** @param episode an episode that may be written to; without a folder there, only what needs none is run */
    static void run(Path episode) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Stage stage = new Stage(nowhere, nowhere, Path.of(""), false);
        for (String command : COMMANDS) {
            if (Files.isDirectory(episode) || !command.contains("EPISODE")) {
                String[] args = command.split(" ");
                for (int i = 0; i < args.length; i++) {
                    args[i] = args[i].equals("EPISODE") ? episode.toString() : args[i];
                }
                Misecue.run(args, stage);
            }
        }
    }
}
