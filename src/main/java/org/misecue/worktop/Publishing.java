package org.misecue.worktop;

import java.time.Duration;
import java.util.Optional;
import org.misecue.episode.EpisodeSettings;
import org.misecue.episode.EpisodeSettings.Publish;
import org.misecue.episode.EpisodeSettings.Web;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;
import org.misecue.publish.DescriptionSettings;
import org.misecue.publish.Emphasis;
import org.misecue.publish.Links;
import org.misecue.publish.Measures;
import org.misecue.publish.WebData;

/** What an episode's settings wish for what is published. */
final class Publishing {

    private Publishing() {}

    static DescriptionSettings description(EpisodeSettings settings) {
        Publish wish = settings.publish();
        return new DescriptionSettings(
                wish.metricFirst() ? Measures.METRIC_FIRST : Measures.HOUSEHOLD_FIRST,
                wish.household(),
                wish.stars() ? Emphasis.STARS : Emphasis.CAPITALS,
                wish.method(),
                wish.maxLength().orElse(DescriptionSettings.USUAL_LIMIT),
                Links.valueOf(wish.links().name()),
                wish.labels());
    }

    static WebData web(Worktop worktop) {
        EpisodeSettings settings = worktop.settings();
        Web web = settings.publish().web();
        return new WebData(
                settings.language(),
                settings.title(),
                web.summary(),
                web.url(),
                web.video(),
                web.player(),
                web.thumbnail(),
                web.image(),
                web.date(),
                web.author(),
                web.publisher(),
                Optional.empty());
    }

    /** Of the film on whose clock the chapters run; empty where it is not there, or not sure which it is. */
    static Optional<Duration> length(Worktop worktop) {
        Optional<String> narration = worktop.settings().publish().film().or(() -> worktop.narrationsOnFilm().stream()
                .findFirst());
        return narration.flatMap(worktop::filmOf).map(Footage::probe).map(FilmInfo::length);
    }
}
