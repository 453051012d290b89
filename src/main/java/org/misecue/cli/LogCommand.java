package org.misecue.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.misecue.edit.FilmedTalk;
import org.misecue.edit.ShotLog;
import org.misecue.edit.ShotLogCsv;
import org.misecue.edit.ShotLogJson;
import org.misecue.edit.ShotLogText;
import org.misecue.footage.FilmInfo;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which shot of the list is in which film. */
@Command(
        name = "log",
        description = {
            "Tell which shot of the list is in which film, which to look for, and which is in none and to be filmed yet.",
            "A slate that is called (“shot seven take two”) or stands in a film's name (shot-7.mp4) tells it; else the words do."
        })
final class LogCommand extends EpisodeCommand {

    @Option(names = "--csv", description = "As a table.")
    private boolean csv;

    @Mixin
    private final ResultOptions to = new ResultOptions();

    LogCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        Map<Path, FilmInfo> films = films(worktop, "log");
        List<FilmedTalk> talks = films.entrySet().stream()
                .map(film -> talk(worktop, film.getKey(), film.getValue()))
                .toList();
        ShotLog log = ShotLog.of(worktop.shots(), worktop.alignment(), talks);
        hand(to.json ? ShotLogJson.of(log) : csv ? ShotLogCsv.of(log) : ShotLogText.of(log), to);
        return ExitCode.OK;
    }

    private static FilmedTalk talk(Worktop worktop, Path path, FilmInfo film) {
        return new FilmedTalk(worktop.episode().name(path), film.length(), worktop.narrationsOf(path));
    }
}
