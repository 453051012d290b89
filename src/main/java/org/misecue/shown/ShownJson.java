package org.misecue.shown;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** A reading as a text to be kept, so that a film is read once. What is no such text is read as absent. */
public final class ShownJson {

    /** Goes up whenever films are read differently, so that what was kept before is read anew. */
    private static final int READING = 1;

    private static final int PIECES = 64;
    private static final int PIECE = 4096;

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private ShownJson() {}

    /**
     * By what a film is known to be unchanged: its size and pieces from all of its length. A copy has the same.
     *
     * @throws BadInput if the file cannot be seen
     */
    public static String mark(Path film) {
        try (SeekableByteChannel channel = Files.newByteChannel(film)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            long size = channel.size();
            ByteBuffer piece = ByteBuffer.allocate(PIECE);
            for (int i = 0; i < PIECES; i++) {
                channel.position(Math.max(0, size - PIECE) * i / (PIECES - 1));
                channel.read(piece.clear());
                digest.update(piece.flip());
            }
            return size + "-" + HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        } catch (IOException e) {
            throw new BadInput(Place.of(film.toString()), "there is no such film; check the name in footage/", e);
        }
    }

    /** Indented, with a line end at the end. */
    public static String write(ShownText shown, String mark) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("reading", READING);
        root.put("mark", mark);
        root.put("film", shown.film());
        root.put("framesRead", shown.framesRead());
        root.put("millis", shown.length().toMillis());
        ArrayNode cards = root.putArray("cards");
        for (Card card : shown.cards()) {
            ObjectNode out = cards.addObject();
            out.put("from", card.from().toMillis());
            out.put("to", card.to().toMillis());
            ArrayNode lines = out.putArray("lines");
            card.lines()
                    .forEach(line -> lines.addObject().put("text", line.text()).put("doubtful", line.doubtful()));
        }
        ArrayNode notes = root.putArray("notes");
        shown.notes()
                .forEach(note ->
                        notes.addObject().put("file", note.place().file()).put("sentence", note.sentence()));
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What was written for a film with the same mark; empty for every other text. */
    public static Optional<ShownText> read(String text, String mark) {
        try {
            JsonNode root = MAPPER.readTree(text);
            boolean ours = root.path("reading").asInt() == READING
                    && mark.equals(root.path("mark").asText());
            return ours ? Optional.of(shown(root)) : Optional.empty();
        } catch (JsonProcessingException | Broken e) {
            return Optional.empty();
        }
    }

    private static ShownText shown(JsonNode root) {
        String film = text(root, "film");
        List<Card> cards = new ArrayList<>();
        for (JsonNode card : array(root, "cards")) {
            List<CardLine> lines = new ArrayList<>();
            for (JsonNode line : array(card, "lines")) {
                // What is not plainly sure is doubtful.
                boolean sure = line.path("doubtful").isBoolean()
                        && !line.path("doubtful").asBoolean();
                lines.add(new CardLine(text(line, "text"), !sure));
            }
            if (lines.isEmpty()) {
                throw new Broken();
            }
            cards.add(new Card(film, millis(card, "from"), millis(card, "to"), List.copyOf(lines)));
        }
        List<Note> notes = new ArrayList<>();
        for (JsonNode note : array(root, "notes")) {
            notes.add(new Note(Place.of(text(note, "file")), text(note, "sentence")));
        }
        Duration length = millis(root, "millis");
        return new ShownText(film, List.copyOf(cards), root.path("framesRead").asInt(), length, List.copyOf(notes));
    }

    private static String text(JsonNode in, String key) {
        return need(in.path(key), in.path(key).isTextual()).asText();
    }

    private static Duration millis(JsonNode in, String key) {
        JsonNode value = in.path(key);
        return Duration.ofMillis(
                need(value, value.isIntegralNumber() && value.asLong() >= 0).asLong());
    }

    private static JsonNode array(JsonNode in, String key) {
        return need(in.path(key), in.path(key).isArray());
    }

    private static JsonNode need(JsonNode value, boolean there) {
        if (!there) {
            throw new Broken();
        }
        return value;
    }

    /** A text that is not as it was written. */
    private static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
