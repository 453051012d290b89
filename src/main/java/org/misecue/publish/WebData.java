package org.misecue.publish;

import java.net.URI;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * What is known of where the recipe and its film are published. What nobody has said stays empty and is written nowhere.
 *
 * @param language of the recipe and the film
 * @param film the film's title, where it is not that of the dish
 * @param summary a sentence or two about the dish, in the producer's words
 * @param page where the recipe is published
 * @param video where the film is
 * @param player where a page gets a player of the film from
 * @param thumbnail a small picture of the film
 * @param picture a picture of the dish
 * @param date on which both are published
 * @param author the person whose recipe it is
 * @param publisher the organisation that publishes it
 * @param length of the film
 */
public record WebData(
        Locale language,
        Optional<String> film,
        Optional<String> summary,
        Optional<URI> page,
        Optional<URI> video,
        Optional<URI> player,
        Optional<URI> thumbnail,
        Optional<URI> picture,
        Optional<LocalDate> date,
        Optional<String> author,
        Optional<String> publisher,
        Optional<Duration> length) {

    /** Nothing but the language. */
    public static WebData in(Locale language) {
        return new WebData(
                language,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public WebData withLength(Optional<Duration> known) {
        return new WebData(
                language, film, summary, page, video, player, thumbnail, picture, date, author, publisher, known);
    }

    /** Whether anything is known of a film. */
    boolean hasFilm() {
        return video.isPresent() || player.isPresent() || thumbnail.isPresent() || length.isPresent();
    }
}
