package org.misecue.sample;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the sample's film shows when, from {@code expected.yaml}.
 *
 * @param steps the step that begins at each second
 * @param captions what stands in the lower third
 */
record SampleTimeline(NavigableMap<Integer, Integer> steps, List<Caption> captions) {

    /** A lower third on screen for the seconds {@code [start, end)}. */
    record Caption(String text, int start, int end) {}

    static SampleTimeline read() throws IOException {
        JsonNode expected;
        try (var in = SampleTimeline.class.getResourceAsStream("expected.yaml")) {
            expected = new YAMLMapper().readTree(in);
        }
        NavigableMap<Integer, Integer> steps = new TreeMap<>();
        steps.put(0, 0);
        expected.get("steps")
                .properties()
                .forEach(step -> steps.put(step.getValue().asInt(), Integer.parseInt(step.getKey())));
        List<Caption> captions = new ArrayList<>();
        for (JsonNode shown : expected.get("shown")) {
            captions.add(new Caption(
                    shown.get("text").asText(),
                    shown.get("start").asInt(),
                    shown.get("end").asInt()));
        }
        return new SampleTimeline(steps, captions);
    }

    /** The step that is on; 0 before the first. */
    int stepAt(int second) {
        return steps.floorEntry(second).getValue();
    }

    /** Seconds since the step began. */
    int sinceStep(int second) {
        return second - steps.floorKey(second);
    }

    Optional<String> captionAt(int second) {
        return captions.stream()
                .filter(caption -> caption.start() <= second && second < caption.end())
                .map(Caption::text)
                .findFirst();
    }
}
