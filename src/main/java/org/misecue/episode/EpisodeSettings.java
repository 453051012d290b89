package org.misecue.episode;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.scale.Batch;
import org.misecue.scale.Sets;

/**
 * What {@code episode.yaml} says; every setting may be left out.
 *
 * @param title of the episode; empty for the recipe's own
 * @param language spoken and written, such as en-GB
 * @param batch the size that is baked; the recipe's own where nothing is said
 * @param sets how often each bowl is filled: for 1 to 9 takes, and 0 to 9 spare
 * @param kitchen what the film kitchen has
 * @param publish how the description is written
 * @param firstShot when the camera rolls first; empty where jobs are counted back from an unnamed hour
 * @param standby what stands by besides the sets of bowls
 * @param day who is there on the filming day and what the clock asks
 * @param offsets of narrations that do not begin with their film; each names a file once
 */
public record EpisodeSettings(
        Optional<String> title,
        Locale language,
        Batch batch,
        Sets sets,
        Kitchen kitchen,
        Publish publish,
        Optional<LocalDateTime> firstShot,
        Standby standby,
        FilmingDay day,
        List<Offset> offsets) {

    /** A folder without {@code episode.yaml}: one written batch, one take, one oven, a scale that shows whole grams. */
    public static final EpisodeSettings DEFAULT = new EpisodeSettings(
            Optional.empty(),
            Locale.UK,
            Batch.WRITTEN,
            Sets.ONE,
            new Kitchen(1, Quantity.of(1, Unit.GRAM), Optional.empty(), Optional.empty()),
            new Publish(
                    OptionalInt.empty(),
                    Household.US_LABEL,
                    true,
                    false,
                    true,
                    Optional.empty(),
                    Batch.WRITTEN,
                    Locale.ENGLISH,
                    Links.DROP,
                    Web.NOWHERE),
            Optional.empty(),
            Standby.USUAL,
            FilmingDay.DEFAULT,
            List.of());

    /**
     * @param ovens from 1 to 9
     * @param scale the smallest step that the scale shows, a mass of 0.01 g to 100 g
     * @param spoons whose spoons and cups the recipe means; empty for those of the language's country
     * @param mixer what the mixer's bowl holds, 0.5 to 100 litres; empty where nobody says
     */
    public record Kitchen(int ovens, Quantity scale, Optional<Household> spoons, Optional<Quantity> mixer) {}

    /**
     * @param maxLength of the description in characters, from 100; empty for what hosts usually take
     * @param household whose cups and spoons are given beside the grams
     * @param metricFirst whether grams come before cups
     * @param stars whether allergens stand between stars, which some hosts print in bold, and not in capitals
     * @param method whether the description has the method, shortened
     * @param film the narration on the film's clock, such as narration/main.vtt, or the film; empty where there is only one
     * @param batch the size that viewers get; the recipe's own where nothing is said
     * @param labels the language of headings, labels, numbers and units; the recipe keeps its own
     * @param links what becomes of addresses in the text
     * @param web where recipe and film are published
     */
    public record Publish(
            OptionalInt maxLength,
            Household household,
            boolean metricFirst,
            boolean stars,
            boolean method,
            Optional<String> film,
            Batch batch,
            Locale labels,
            Links links,
            Web web) {}

    /** What becomes of web addresses in the description. */
    public enum Links {
        /** They go. */
        DROP,
        /** They go, and words in their place say that there was one. */
        NOTE,
        /** They stay, where they are such as a browser opens as a page. */
        KEEP
    }

    /**
     * Where recipe and film are published; what is left out is published nowhere.
     *
     * @param summary a sentence or two about the dish
     * @param url the recipe's page
     * @param video the film
     * @param player what a page embeds to play the film
     * @param thumbnail a small picture of the film
     * @param image a picture of the dish
     * @param date of publication
     * @param author a person
     * @param publisher an organisation
     */
    public record Web(
            Optional<String> summary,
            Optional<URI> url,
            Optional<URI> video,
            Optional<URI> player,
            Optional<URI> thumbnail,
            Optional<URI> image,
            Optional<LocalDate> date,
            Optional<String> author,
            Optional<String> publisher) {

        public static final Web NOWHERE = new Web(
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
}
