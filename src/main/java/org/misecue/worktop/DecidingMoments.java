package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.misecue.footage.FilmInfo;
import org.misecue.narration.Moment;

/**
 * The moments that the producer has to decide about, each with its picture and its piece of film.
 *
 * @param stills by moment, as names within {@code out/}
 * @param clips the same
 */
public record DecidingMoments(Map<Moment, String> stills, Map<Moment, String> clips) {

    private static final Duration AFTER = Duration.ofSeconds(6);

    /** Moments that no film has are left out. */
    public static DecidingMoments make(Worktop worktop, Map<Path, FilmInfo> films) {
        Map<Moment, String> stills = new LinkedHashMap<>();
        Map<Moment, String> clips = new LinkedHashMap<>();
        Moments moments = new Moments(worktop);
        for (Moment moment : worktop.findings().openMoments()) {
            worktop.filmOf(moment.source())
                    .map(films::get)
                    .filter(film -> film.picture().isPresent() && moment.at().compareTo(film.length()) < 0)
                    .ifPresent(film -> {
                        moments.still(moment).ifPresent(still -> stills.put(moment, still));
                        moments.clip(moment, moment.at().plus(AFTER)).ifPresent(clip -> clips.put(moment, clip));
                    });
        }
        return new DecidingMoments(stills, clips);
    }
}
