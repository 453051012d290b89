package org.misecue.footage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was read of a film's subtitles as a text to be kept. What is no such text is read as absent. */
public final class SubtitlesJson {

    /** Goes up whenever films are read differently, so that what was kept before is read anew. */
    private static final int READING = 1;

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private SubtitlesJson() {}

    /** Indented, with a line end at the end. */
    public static String write(FilmSubtitles subtitles, String mark) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("reading", READING);
        root.put("mark", mark);
        ArrayNode tracks = root.putArray("tracks");
        for (SubtitleTrack track : subtitles.tracks()) {
            tracks.addObject()
                    .put("number", track.number())
                    .put("codec", track.codec())
                    .put("language", track.language())
                    .put("markup", track.markup().name());
        }
        root.put("read", subtitles.read().map(SubtitleTrack::number).orElse(0));
        ArrayNode texts = root.putArray("texts");
        for (Subtitle one : subtitles.texts()) {
            ObjectNode out = texts.addObject().put("from", one.from().toNanos());
            one.to().ifPresent(to -> out.put("to", to.toNanos()));
            out.put("text", one.text());
        }
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What was written for a film with the same mark; empty for every other text. */
    public static Optional<FilmSubtitles> read(String text, String mark) {
        try {
            JsonNode root = MAPPER.readTree(text);
            return root.path("reading").asInt() == READING
                            && root.path("mark").asText().equals(mark)
                    ? Optional.of(subtitles(root))
                    : Optional.empty();
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static FilmSubtitles subtitles(JsonNode root) {
        List<SubtitleTrack> tracks = new ArrayList<>();
        for (JsonNode track : root.path("tracks")) {
            tracks.add(new SubtitleTrack(
                    track.path("number").asInt(),
                    track.path("codec").asText(),
                    track.path("language").asText(),
                    SubtitleTrack.Markup.valueOf(track.path("markup").asText())));
        }
        List<Subtitle> texts = new ArrayList<>();
        for (JsonNode one : root.path("texts")) {
            texts.add(new Subtitle(
                    Duration.ofNanos(one.path("from").asLong()),
                    one.has("to") ? Optional.of(Duration.ofNanos(one.path("to").asLong())) : Optional.empty(),
                    one.path("text").asText()));
        }
        int read = root.path("read").asInt();
        return new FilmSubtitles(
                List.copyOf(tracks),
                tracks.stream().filter(track -> track.number() == read).findFirst(),
                List.copyOf(texts));
    }
}
