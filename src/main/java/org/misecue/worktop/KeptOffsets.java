package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.episode.OutFolder;
import org.misecue.footage.Offset;

/** How films lie to one another by their sound, kept in {@code .misecue/together.json} by what is in them. */
final class KeptOffsets {

    /** Goes up whenever films are held against each other differently, so that what was kept before is found anew. */
    private static final int HEARING = 1;

    private static final String FILE = "together.json";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final OutFolder state;
    private final List<Kept> all = new ArrayList<>();

    /** Two films by their marks; no offset where it was found that nothing can be known. */
    private record Kept(String first, String second, Optional<Offset> offset) {}

    KeptOffsets(OutFolder state) {
        this.state = state;
        Path file = state.path(FILE);
        if (Files.isRegularFile(file)) {
            try {
                read(MAPPER.readTree(new String(Files.readAllBytes(file), UTF_8)));
            } catch (IOException e) {
                all.clear(); // it can be made again
            }
        }
    }

    /** Empty where the two were never held against each other; inside, what was found. */
    Optional<Optional<Offset>> read(String first, String second) {
        for (Kept kept : all) {
            if (kept.first.equals(first) && kept.second.equals(second)) {
                return Optional.of(kept.offset);
            }
            if (kept.first.equals(second) && kept.second.equals(first)) {
                return Optional.of(kept.offset.map(Offset::turned));
            }
        }
        return Optional.empty();
    }

    void keep(String first, String second, Optional<Offset> offset) {
        all.add(new Kept(first, second, offset));
        ObjectNode root = MAPPER.createObjectNode().put("hearing", HEARING);
        all.forEach(kept -> write(kept, root.withArrayProperty("pairs").addObject()));
        try {
            state.write(FILE, MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n");
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Kept kept, ObjectNode out) {
        out.put("first", kept.first).put("second", kept.second);
        kept.offset.ifPresent(offset -> {
            out.put("laterNanos", offset.later().toNanos());
            out.put("apartNanos", offset.apart().toNanos());
            if (offset.basis() instanceof Offset.BySound sound) {
                out.put("alike", sound.alike()).put("tried", sound.tried());
                out.put("clearness", sound.clearness().toString());
            }
        });
    }

    /** Whatever is not as it was written is left out. */
    private void read(JsonNode root) {
        if (root.path("hearing").asInt() != HEARING) {
            return;
        }
        for (JsonNode pair : root.path("pairs")) {
            JsonNode first = pair.path("first");
            JsonNode second = pair.path("second");
            boolean known = pair.has("laterNanos");
            Optional<Offset> offset = known ? offset(pair) : Optional.empty();
            if (first.isTextual() && second.isTextual() && known == offset.isPresent()) {
                all.add(new Kept(first.asText(), second.asText(), offset));
            }
        }
    }

    private static Optional<Offset> offset(JsonNode pair) {
        boolean whole = pair.path("laterNanos").isIntegralNumber()
                && pair.path("apartNanos").isIntegralNumber()
                && pair.path("clearness").asText().matches("\\d{1,6}\\.\\d\\d");
        return whole
                ? Optional.of(new Offset(
                        Duration.ofNanos(pair.path("laterNanos").asLong()),
                        Duration.ofNanos(pair.path("apartNanos").asLong()),
                        new Offset.BySound(
                                pair.path("alike").asInt(),
                                pair.path("tried").asInt(),
                                new BigDecimal(pair.path("clearness").asText()))))
                : Optional.empty();
    }
}
