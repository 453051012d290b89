package org.misecue.bench;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;

/**
 * What somebody half remembers, and when it was said.
 *
 * @param at where the cues that hold it begin, in seconds; any of them is right
 */
record KeywordQuery(String query, List<Double> at) {

    /** Judged by reading the narrations, without the program; by case. */
    static Map<String, List<KeywordQuery>> all() throws IOException {
        try (InputStream in = KeywordQuery.class.getResourceAsStream("keywords.yaml")) {
            return in == null ? Map.of() : new YAMLMapper().readValue(in, new TypeReference<>() {});
        }
    }
}
