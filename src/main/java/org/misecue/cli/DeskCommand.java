package org.misecue.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.misecue.desk.Desk;
import org.misecue.desk.DeskSettings;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The page for the three people. */
@Command(
        name = "desk",
        description = {
            "Open the desk: a page in the browser over an episode, or over a folder of episodes.",
            "It serves this machine only, and stays open until it is closed there or stopped with Ctrl-C."
        })
final class DeskCommand extends MisecueCommand {

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "An episode, or a folder of episodes; this folder where none is named.")
    private Optional<Path> folder = Optional.empty();

    @Option(
            names = "--at-home",
            description = {
                "Where no folder is named: the folder misecue in your home, made if need be,",
                "as it is wished where the desk is opened by a click."
            })
    private boolean atHome;

    @Option(
            names = "--port",
            paramLabel = "NUMBER",
            defaultValue = "0",
            description = "Where the page is served; any that is free where none is named.")
    private int port;

    @Option(
            names = "--lan",
            description = {
                "Let phones and tablets of the local network in too, each with a code that is printed here."
                        + " They see the bowls and the day.",
                "What they send can be read on that network: not for a network of strangers."
            })
    private boolean lan;

    @Option(names = "--no-browser", description = "Print the address, and open no browser.")
    private boolean noBrowser;

    DeskCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        if (port < 0 || port > 65_535) {
            throw new BadInput(Place.of("--port"), "expected a number from 0 to 65535, not " + port + ".");
        }
        Path over = over(); // which may be made, so only when all else is right
        DeskSettings settings = new DeskSettings(over, port, lan, this::tellCode, stage.home(), stage.language());
        try (Desk desk = Desk.open(settings)) {
            stage.out().println(desk.address());
            desk.guestAddresses().forEach(address -> stage.err().println("On other devices: " + address));
            stage.out().flush();
            if (!noBrowser) {
                Browser.open(desk.address());
            }
            desk.untilFinished();
        }
        return ExitCode.OK;
    }

    private Path over() {
        if (atHome && folder.isEmpty()) {
            return atHome();
        }
        Path named = folder.orElse(Path.of("."));
        Path over = stage.resolve(named).toAbsolutePath().normalize();
        if (!Files.isDirectory(over)) {
            throw new BadInput(Place.of(named.toString()), "there is no such folder; check the name.");
        }
        return over;
    }

    private Path atHome() {
        Path over = stage.home()
                .orElseThrow(() -> new BadInput(Place.of("--at-home"), "nobody is at home here; name a folder."))
                .resolve("misecue");
        try {
            return Files.createDirectories(over);
        } catch (IOException e) {
            throw new BadInput(Place.of(over.toString()), "this folder cannot be made; name another.", e);
        }
    }

    private void tellCode(String code) {
        stage.err().println("The code for one more device: " + code);
        stage.err().flush();
    }
}
