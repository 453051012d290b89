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
import org.misecue.footage.Beside;
import org.misecue.footage.Offset;

/** How films lie to one another by their sound, kept in {@code .misecue/together.json} by what is in them. */
final class KeptOffsets {

    /** Goes up whenever films are held against each other differently, so that what was kept before is found anew. */
    private static final int HEARING = 2;

    private static final String FILE = "together.json";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final OutFolder state;
    private final List<Kept> all = new ArrayList<>();

    /** Two films by their marks; no offset where it was found that nothing can be known. */
    private record Kept(String first, String second, Beside beside) {}

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
    Optional<Beside> read(String first, String second) {
        for (Kept kept : all) {
            if (kept.first.equals(first) && kept.second.equals(second)) {
                return Optional.of(kept.beside);
            }
            if (kept.first.equals(second) && kept.second.equals(first)) {
                return Optional.of(kept.beside.turned());
            }
        }
        return Optional.empty();
    }

    void keep(String first, String second, Beside beside) {
        all.add(new Kept(first, second, beside));
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
        kept.beside.denied().ifPresent(denied -> out.put("deniedNanos", denied.toNanos()));
        kept.beside.offset().ifPresent(offset -> {
            out.put("laterNanos", offset.later().toNanos());
            out.put("apartNanos", offset.apart().toNanos());
            if (offset.basis() instanceof Offset.BySound sound) {
                out.put("alike", sound.alike()).put("tried", sound.tried());
                out.put("clearness", sound.clearness().toString());
            } else if (offset.basis() instanceof Offset.ByBoth both) {
                out.put("alike", both.alike()).put("tried", both.tried());
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
                Optional<Duration> denied = nanos(pair, "deniedNanos");
                all.add(new Kept(first.asText(), second.asText(), new Beside(offset, denied)));
            }
        }
    }

    private static Optional<Offset> offset(JsonNode pair) {
        return nanos(pair, "laterNanos").flatMap(later -> nanos(pair, "apartNanos")
                .flatMap(apart -> basis(pair).map(basis -> new Offset(later, apart, basis))));
    }

    private static Optional<Duration> nanos(JsonNode pair, String name) {
        JsonNode count = pair.path(name);
        return count.isIntegralNumber() ? Optional.of(Duration.ofNanos(count.asLong())) : Optional.empty();
    }

    /** What was heard; time codes alone where nothing stands there. */
    private static Optional<Offset.Basis> basis(JsonNode pair) {
        int alike = pair.path("alike").asInt();
        int tried = pair.path("tried").asInt();
        if (!pair.has("clearness")) {
            return Optional.of(pair.has("alike") ? new Offset.ByBoth(alike, tried) : new Offset.ByTimecode(true));
        }
        String clearness = pair.path("clearness").asText();
        return clearness.matches("\\d{1,6}\\.\\d\\d")
                ? Optional.of(new Offset.BySound(alike, tried, new BigDecimal(clearness)))
                : Optional.empty();
    }
}
