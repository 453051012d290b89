package org.misecue.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.misecue.desk.Desk;
import org.misecue.desk.DeskSettings;

/**
 * Runs the everyday commands once, unseen, so that the build can keep their loaded classes in an archive and every later
 * start is quick.
 */
final class Rehearsal {

    private static final List<String> COMMANDS = List.of(
            "--version",
            "read -q EPISODE",
            "index EPISODE -q",
            "find butter -q -e EPISODE",
            "find butter -q --json -e EPISODE",
            "compare -q EPISODE");

    private Rehearsal() {}

    /**
     * @param episode an episode that may be written to; without a folder there, only what needs none is run
     * @return the worst exit code; more than 1 where a command could not do its work
     */
    static int run(Path episode) {
        int worst = ExitCode.OK;
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, UTF_8);
        Stage stage = new Stage(nowhere, Stage.ofProcess().err(), Path.of(""), false);
        for (String command : COMMANDS) {
            if (Files.isDirectory(episode) || !command.contains("EPISODE")) {
                String[] args = command.split(" ");
                for (int i = 0; i < args.length; i++) {
                    args[i] = args[i].equals("EPISODE") ? episode.toString() : args[i];
                }
                worst = Math.max(worst, Misecue.run(args, stage));
            }
        }
        return Files.isDirectory(episode) ? Math.max(worst, visit(episode)) : worst;
    }

    /** A desk that is opened, looked at and closed. */
    private static int visit(Path episode) {
        DeskSettings settings = new DeskSettings(
                episode.toAbsolutePath().normalize(), 0, false, code -> {}, Optional.empty(), Optional::empty);
        try (Desk desk = Desk.open(settings)) {
            HttpURLConnection entry = ask(desk.address());
            entry.setInstanceFollowRedirects(false);
            String cookie = entry.getHeaderField("Set-Cookie").replaceFirst(";.*", "");
            HttpURLConnection page = ask(desk.address().replaceFirst("[?].*", ""));
            page.setRequestProperty("Cookie", cookie);
            return page.getResponseCode() == HttpURLConnection.HTTP_OK ? ExitCode.OK : ExitCode.OUR_FAULT;
        } catch (IOException e) {
            return ExitCode.OUR_FAULT;
        }
    }

    private static HttpURLConnection ask(String address) throws IOException {
        return (HttpURLConnection) URI.create(address).toURL().openConnection();
    }
}
