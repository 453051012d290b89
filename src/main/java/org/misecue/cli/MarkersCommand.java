package org.misecue.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.misecue.edit.CsvFile;
import org.misecue.edit.EdlFile;
import org.misecue.edit.MarkedFilm;
import org.misecue.edit.OtioFile;
import org.misecue.episode.OutFolder;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Track;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.worktop.FilmMarkers;
import org.misecue.worktop.ResultNames;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;

/** What the editor has to find again, as markers. */
@Command(
        name = "markers",
        description = {
            "Write where steps begin, what differs, and what is to be filmed again or covered, as markers:",
            "out/markers.otio (OpenTimelineIO), out/markers.csv, and a CMX 3600 list for each film, out/markers/NAME.edl.",
            "A film without a narration of its own gets the markers of the films that ran beside it, on its own clock."
        })
final class MarkersCommand extends EpisodeCommand {

    MarkersCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        Map<Path, FilmInfo> films = films(worktop, "mark");
        tell(worktop.narrationNotes());
        films.forEach((path, film) -> tell(uneven(worktop.episode().name(path), film)));
        FilmMarkers markers = new FilmMarkers(worktop, cameras(worktop), films);
        List<MarkedFilm> marked = markers.all();
        tell(markers.notes());
        OutFolder out = worktop.episode().out();
        made(out, "markers.otio", OtioFile.of(worktop.title(), marked));
        made(out, "markers.csv", CsvFile.of(marked));
        ResultNames names =
                new ResultNames(marked.stream().map(MarkedFilm::file).toList());
        marked.forEach(film -> made(out, "markers/" + names.of(film.file()) + ".edl", EdlFile.of(film)));
        return ExitCode.OK;
    }

    private static List<Note> uneven(String name, FilmInfo film) {
        return film
                .picture()
                .filter(Track.Picture::variableRate)
                .map(
                        any -> new Note(
                                Place.of(name),
                                "its frames last differently long, and time codes count them at their mean rate; for the frame itself go by the seconds"))
                .stream()
                .toList();
    }
}
