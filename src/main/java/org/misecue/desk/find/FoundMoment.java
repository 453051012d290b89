package org.misecue.desk.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Tab;
import org.misecue.narration.Clock;
import org.misecue.search.Hit;
import org.misecue.search.Passage;

/**
 * A hit as it stands on the page.
 *
 * @param address leads to the moment
 * @param roll the name of its roll
 * @param at seconds
 * @param time for people
 * @param timecodes of the film, and of its camera
 * @param episode named where there are several
 * @param about step, speaker, film: whatever is known
 */
public record FoundMoment(
        String address,
        String roll,
        String at,
        String time,
        List<String> timecodes,
        Optional<String> episode,
        List<Quoted> quote,
        String about) {

    static FoundMoment in(OpenEpisode episode, Rolls rolls, Hit hit, String words) {
        Optional<Roll> roll = rolls.roll(hit.source());
        Optional<Film> film = roll.flatMap(Roll::film);
        List<String> timecodes = new ArrayList<>();
        film.flatMap(one -> one.timecode(hit.at())).ifPresent(timecodes::add);
        film.flatMap(one -> one.cameraTimecode(hit.at())).ifPresent(code -> timecodes.add("camera " + code));
        String place = roll.map(Roll::title).orElse(hit.source());
        return of(
                hit,
                episode.path(Tab.FIND.path()),
                words,
                timecodes,
                Optional.empty(),
                roll.map(Roll::name).orElse(hit.source()),
                place + (film.isEmpty() ? ", no picture" : ""));
    }

    /** Of an archive: it leads to the episode's own page, where its film is. */
    static FoundMoment inArchive(Hit hit, String words) {
        String page = OpenEpisode.path(hit.episodeName(), Tab.FIND.path());
        return of(hit, page, words, List.of(), Optional.of(hit.episodeName()), hit.source(), hit.source());
    }

    private static FoundMoment of(
            Hit hit,
            String page,
            String words,
            List<String> timecodes,
            Optional<String> episode,
            String roll,
            String place) {
        List<String> about = new ArrayList<>();
        switch (hit.kind()) {
            case INGREDIENT -> about.add("in the list of ingredients");
            case SHOT -> about.add("in the shot list");
            case SHOWN -> about.add("shown in the picture");
            default -> {}
        }
        if (hit.step() > 0) {
            about.add((hit.kind() == Passage.Kind.STEP ? "written in step " : "step ") + hit.step());
        }
        hit.speaker().ifPresent(about::add);
        about.add(place);
        return new FoundMoment(
                Address.of(page, words, roll, hit.at()),
                roll,
                Address.seconds(hit.at()),
                Clock.hms(hit.at()),
                timecodes,
                episode,
                Quoted.of(hit),
                String.join(" · ", about));
    }
}
