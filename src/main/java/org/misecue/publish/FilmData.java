package org.misecue.publish;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The film as a schema.org VideoObject with a Clip for each chapter. */
final class FilmData {

    private FilmData() {}

    /** Empty where nothing is known of a film. */
    static Optional<ObjectNode> of(Edition edition) {
        WebData web = edition.web();
        List<Chapter> chapters = edition.chapters().chapters();
        if (chapters.isEmpty() && !web.hasFilm()) {
            return Optional.empty();
        }
        ObjectNode film = JsonNodeFactory.instance.objectNode();
        film.put("@type", "VideoObject");
        film.put("name", SafeText.line(web.film().orElse(edition.recipe().title())));
        SchemaOrg.text(film, "description", web.summary());
        film.put("inLanguage", web.language().toLanguageTag());
        SchemaOrg.url(film, "contentUrl", web.video());
        SchemaOrg.url(film, "embedUrl", web.player());
        SchemaOrg.url(film, "thumbnailUrl", web.thumbnail());
        web.date().ifPresent(day -> film.put("uploadDate", day.toString()));
        web.length().map(FilmData::wholeSeconds).ifPresent(length -> film.put("duration", length.toString()));
        if (!chapters.isEmpty()) {
            film.set("hasPart", clips(chapters, web));
        }
        return Optional.of(film);
    }

    /** Each chapter ends where the next begins; where the last one ends is known with the film's length only. */
    private static ArrayNode clips(List<Chapter> chapters, WebData web) {
        ArrayNode clips = JsonNodeFactory.instance.arrayNode();
        for (int at = 0; at < chapters.size(); at++) {
            Chapter chapter = chapters.get(at);
            Optional<Duration> end = at + 1 < chapters.size()
                    ? Optional.of(chapters.get(at + 1).start())
                    : web.length().map(FilmData::wholeSeconds).filter(length -> length.compareTo(chapter.start()) > 0);
            ObjectNode clip = clips.addObject()
                    .put("@type", "Clip")
                    .put("name", chapter.title())
                    .put("startOffset", chapter.start().toSeconds());
            end.ifPresent(known -> clip.put("endOffset", known.toSeconds()));
            SchemaOrg.url(clip, "url", web.video().map(video -> at(video, chapter.start(), end)));
        }
        return clips;
    }

    /** The stretch of a film by the Media Fragments of the W3C: "#t=35,80"; from memory. */
    private static URI at(URI video, Duration start, Optional<Duration> end) {
        String stretch =
                start.toSeconds() + end.map(known -> "," + known.toSeconds()).orElse("");
        return URI.create(video.toString().replaceFirst("#.*$", "") + "#t=" + stretch);
    }

    private static Duration wholeSeconds(Duration length) {
        return Duration.ofSeconds(length.toSeconds());
    }
}
