package org.misecue.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.misecue.edit.CsvFile;
import org.misecue.edit.EdlFile;
import org.misecue.edit.MarkedFilm;
import org.misecue.edit.Marker;
import org.misecue.edit.Markers;
import org.misecue.edit.OtioFile;
import org.misecue.episode.OutFolder;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Track;
import org.misecue.narration.Narration;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.publish.Chapter;
import org.misecue.publish.Chapters;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;

/** What the editor has to find again, as markers. */
@Command(
        name = "markers",
        description = {
            "Write where steps begin, what differs, and what is to be filmed again or covered, as markers:",
            "out/markers.otio (OpenTimelineIO), out/markers.csv, and a CMX 3600 list for each film, out/markers/NAME.edl."
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
        List<MarkedFilm> marked = new ArrayList<>();
        films.forEach((path, film) -> marked.add(marked(worktop, path, film)));
        OutFolder out = worktop.episode().out();
        made(out, "markers.otio", OtioFile.of(worktop.title(), marked));
        made(out, "markers.csv", CsvFile.of(marked));
        marked.forEach(film -> made(out, "markers/" + Worktop.stem(film.file()) + ".edl", EdlFile.of(film)));
        return ExitCode.OK;
    }

    private MarkedFilm marked(Worktop worktop, Path path, FilmInfo film) {
        String name = worktop.episode().name(path);
        if (film.picture().filter(Track.Picture::variableRate).isPresent()) {
            tell(
                    List.of(
                            new Note(
                                    Place.of(name),
                                    "its frames last differently long, and time codes count them at their mean rate; for the frame itself go by the seconds")));
        }
        Predicate<String> isHere = source -> source.equals(name)
                || worktop.filmOf(source).filter(path::equals).isPresent();
        List<Chapter> steps = Chapters.steps(
                worktop.recipe(),
                worktop.alignment(),
                worktop.narrationsOf(path).stream().map(Narration::source).toList());
        List<Marker> markers = Markers.of(worktop.docket(), steps, isHere);
        return MarkedFilm.of(worktop.title(), name, film, markers);
    }
}
