package org.misecue.shots;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;

/** The list as the JSON document of {@code shots --json}. Keys may be added to it, never changed. */
public final class ShotsJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private ShotsJson() {}

    /** Indented, with a line end at the end. */
    public static String of(ShotPlan plan) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("title", plan.title());
        ArrayNode shots = root.putArray("shots");
        for (Shot shot : plan.shots()) {
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
        out.put("step", shot.step());
        ArrayNode laterSteps = out.putArray("laterSteps");
        shot.laterSteps().forEach(laterSteps::add);
        out.put("technique", shot.technique());
        out.put("setup", shot.setup());
        out.put("camera", shot.camera());
        out.put("see", shot.see());
        out.put("hands", shot.hands());
        ArrayNode bowls = out.putArray("bowls");
        shot.bowls().forEach(bowls::add);
        out.put("sound", shot.sound());
        out.put("say", shot.say());
        out.put("lowerThird", shot.lowerThird());
        out.put("takes", shot.takes());
        out.put("oneChance", shot.oneChance());
        ArrayNode hazards = out.putArray("hazards");
        shot.hazards().forEach(hazards::add);
    }
}
