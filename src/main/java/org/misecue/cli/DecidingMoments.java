package org.misecue.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.compare.Comparison;
import org.misecue.compare.Evidence;
import org.misecue.compare.LineVerdict;
import org.misecue.compare.SettingVerdict;
import org.misecue.compare.Unwritten;
import org.misecue.compare.Verdict;
import org.misecue.footage.FilmInfo;
import org.misecue.narration.Moment;

/**
 * The moments that the producer has to decide about, each with its picture and its piece of film.
 *
 * @param stills by moment, as names within {@code out/}
 * @param clips the same
 */
record DecidingMoments(Map<Moment, String> stills, Map<Moment, String> clips) {

    private static final Duration AFTER = Duration.ofSeconds(6);

    /** Moments that no film has are left out. */
    static DecidingMoments make(Worktop worktop, Map<Path, FilmInfo> films) {
        Map<Moment, String> stills = new LinkedHashMap<>();
        Map<Moment, String> clips = new LinkedHashMap<>();
        Moments moments = new Moments(worktop);
        for (Moment moment : of(worktop.comparison())) {
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

    private static Set<Moment> of(Comparison comparison) {
        Stream<List<Evidence>> evidence = Stream.of(
                        comparison.written().stream()
                                .filter(line -> line.verdict() == Verdict.DIFFERS)
                                .map(LineVerdict::evidence),
                        comparison.settings().stream()
                                .filter(setting -> setting.verdict() == Verdict.DIFFERS)
                                .map(SettingVerdict::evidence),
                        comparison.unwritten().stream().map(Unwritten::evidence))
                .flatMap(each -> each);
        Set<Moment> moments = new LinkedHashSet<>();
        evidence.flatMap(List::stream).map(Evidence::moment).forEach(moments::add);
        return moments;
    }
}
