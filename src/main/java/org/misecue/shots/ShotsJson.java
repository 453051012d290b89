package org.misecue.shots;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/** The list as the JSON document of {@code shots --json}. Keys may be added to it, never changed. */
public final class ShotsJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private ShotsJson() {}

    /** Indented, with a line end at the end. */
    public static String of(ShotPlan plan, ShotOrder order) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("title", plan.title());
        root.put("order", order.name().toLowerCase(Locale.ROOT));
        ArrayNode shots = root.putArray("shots");
        for (Shot shot : plan.in(order)) {
            write(shot, shots.addObject());
        }
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Shot shot, ObjectNode out) {
        out.put("number", shot.number());
        out.put("kind", shot.kind().code());
        out.put("step", shot.step());
        numbers(out, "laterSteps", shot.laterSteps());
        out.put("technique", shot.technique());
        out.put("setup", shot.setup());
        out.put("camera", shot.camera());
        out.put("see", shot.see());
        out.put("hands", shot.hands());
        numbers(out, "bowls", shot.bowls());
        out.put("sound", shot.sound());
        out.put("say", shot.say());
        texts(out, "sayings", shot.sayings().stream().map(Saying::words).toList());
        out.put("lowerThird", shot.lowerThird());
        out.put("takes", shot.takes());
        texts(out, "slate", shot.slates());
        out.put("oneChance", shot.oneChance());
        texts(out, "hazards", shot.hazards().stream().map(Hazard::toString).toList());
        numbers(out, "after", shot.after());
    }

    private static void numbers(ObjectNode out, String key, List<Integer> numbers) {
        ArrayNode array = out.putArray(key);
        numbers.forEach(array::add);
    }

    private static void texts(ObjectNode out, String key, List<String> texts) {
        ArrayNode array = out.putArray(key);
        texts.forEach(array::add);
    }
}
