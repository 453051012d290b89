package org.misecue.edit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.List;

/** Films with their markers as an OpenTimelineIO timeline (JSON): a clip for each film, one behind the other. */
public final class OtioFile {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String MEDIA = "DEFAULT_MEDIA";

    private OtioFile() {}

    /** @param title of the timeline */
    public static String of(String title, List<MarkedFilm> films) {
        ObjectNode timeline = schema("Timeline.1").put("name", title);
        timeline.putNull("global_start_time");
        ObjectNode track = schema("Track.1").put("name", "films").put("kind", "Video");
        ArrayNode clips = track.putArray("children");
        films.forEach(film -> clips.add(clip(film)));
        ObjectNode stack = schema("Stack.1").put("name", "tracks");
        stack.putArray("children").add(track);
        timeline.set("tracks", stack);
        timeline.putObject("metadata");
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(timeline) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode clip(MarkedFilm film) {
        ObjectNode clip = schema("Clip.2").put("name", film.name());
        clip.set("source_range", range(film, 0, film.frames()));
        ObjectNode media = schema("ExternalReference.1").put("target_url", film.file());
        media.set("available_range", range(film, 0, film.frames()));
        media.putObject("metadata");
        clip.putObject("media_references").set(MEDIA, media);
        clip.put("active_media_reference_key", MEDIA);
        clip.putArray("effects");
        ArrayNode markers = clip.putArray("markers");
        film.markers().forEach(marker -> markers.add(marker(film, marker)));
        clip.put("enabled", true);
        clip.putObject("metadata");
        return clip;
    }

    private static ObjectNode marker(MarkedFilm film, Marker marker) {
        ObjectNode node = schema("Marker.2")
                .put("name", marker.name())
                .put("color", marker.kind().colour())
                .put("comment", marker.comment());
        node.set("marked_range", range(film, film.rate().frameAt(marker.at()), 1));
        node.putObject("metadata")
                .putObject("misecue")
                .put("kind", marker.kind().word());
        return node;
    }

    /** On the film's own clock, which begins at its time code. */
    private static ObjectNode range(MarkedFilm film, long from, long frames) {
        ObjectNode range = schema("TimeRange.1");
        range.set("start_time", time(film, film.starts().frame() + from));
        range.set("duration", time(film, frames));
        return range;
    }

    private static ObjectNode time(MarkedFilm film, long frame) {
        double rate = (double) film.rate().frames() / film.rate().seconds();
        return schema("RationalTime.1").put("rate", rate).put("value", (double) frame);
    }

    private static ObjectNode schema(String name) {
        return JSON.createObjectNode().put("OTIO_SCHEMA", name);
    }
}
