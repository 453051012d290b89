package org.misecue.desk.text;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.misecue.compare.Findings;
import org.misecue.decide.Matter;
import org.misecue.desk.check.Play;
import org.misecue.episode.Publication;
import org.misecue.episode.Publications;
import org.misecue.narration.Clock;
import org.misecue.notice.Note;
import org.misecue.offers.Offer;
import org.misecue.prep.PrepPlan;
import org.misecue.publish.Description;
import org.misecue.publish.Erratum;
import org.misecue.worktop.PublishedFiles;
import org.misecue.worktop.Release;
import org.misecue.worktop.Worktop;

/**
 * What the page shows.
 *
 * @param text as it goes out; while something keeps it back its head says so
 * @param characters how long it is, and how long the box lets it be
 * @param blocking what keeps it from going out
 * @param notes what is to be known before it does
 * @param offers what was offered on camera, to be heard
 * @param heardOtherwise sentences about words that somebody corrected
 * @param law by what allergens are told
 * @param published what went out until now, the latest first
 * @param erratum the correction for viewers; empty where nothing went out
 */
public record TextSheet(
        String text,
        String characters,
        List<Matter> blocking,
        List<String> notes,
        List<Offered> offers,
        List<String> heardOtherwise,
        String law,
        List<Publication> published,
        Optional<Erratum> erratum) {

    /**
     * One offer with the moment where it can be heard.
     *
     * @param film the film's file name; empty where there is none of it
     * @param sentence what was understood, and what the description makes of it
     */
    public record Offered(Offer offer, Optional<String> film, String sentence) {

        public String time() {
            return Clock.hms(offer.moment().at());
        }

        public String seconds() {
            return Play.seconds(offer.moment().at());
        }
    }

    static TextSheet of(Worktop worktop, LocalDate today) {
        Release release = new Release(worktop);
        Description description = worktop.description();
        List<Publication> published = new ArrayList<>(new Publications(worktop.episode()).read());
        Collections.reverse(published);
        return new TextSheet(
                new PublishedFiles(worktop).text(),
                "%,d of %,d characters".formatted(description.text().length(), worktop.mostCharacters()),
                release.blocking(),
                description.notes().stream().map(Note::toString).toList(),
                worktop.offers().stream()
                        .map(offer -> new Offered(
                                offer, Play.film(worktop, offer.moment().source()), sentence(Worktop.words(offer))))
                        .toList(),
                worktop.heardOtherwise(),
                Findings.ALLERGENS + " " + PrepPlan.LAW,
                List.copyOf(published),
                published.isEmpty() ? Optional.empty() : Optional.of(release.erratum(today)));
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    public boolean isDraft() {
        return !blocking.isEmpty();
    }

    /** Changes with anything that stands on the page. */
    public String mark() {
        return UUID.nameUUIDFromBytes(toString().getBytes(UTF_8)).toString();
    }
}
