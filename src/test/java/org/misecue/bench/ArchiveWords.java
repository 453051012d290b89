package org.misecue.bench;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;

/** The words that invented episodes are made of. */
record ArchiveWords(
        List<String> bakes,
        List<String> manners,
        Map<String, List<Integer>> flours,
        Map<String, List<Integer>> fats,
        Map<String, List<Integer>> sugars,
        Map<String, List<Integer>> nuts,
        Map<String, List<Integer>> fruits,
        List<String> spices,
        List<String> extracts,
        Map<String, List<Integer>> liquids,
        Map<String, List<Integer>> toppings,
        List<String> onsets,
        List<String> middles,
        List<String> endings,
        List<String> openings,
        List<String> amounts,
        List<String> talk,
        List<String> closings) {

    static ArchiveWords read() {
        try (InputStream in = ArchiveWords.class.getResourceAsStream("synthetic-archive.yaml")) {
            return new YAMLMapper().readValue(Objects.requireNonNull(in), ArchiveWords.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static <T> T any(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }

    /** A place or a person; there are some twelve thousand, and a few are often spoken of, as in any kitchen. */
    String place(Random random) {
        return often(onsets, random) + often(middles, random) + often(endings, random);
    }

    private static String often(List<String> parts, Random random) {
        double early = random.nextDouble();
        return parts.get((int) (early * early * parts.size()));
    }
}
