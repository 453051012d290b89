package org.misecue.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.align.Aligner;
import org.misecue.align.Alignment;
import org.misecue.narration.Cue;
import org.misecue.pantry.Pantry;

/**
 * Which step is on while each cue of an episode is said, as people saw it who never saw the program. A file's rows are
 * {@code start<TAB>step}; {@code 3|4} where two careful readers could differ.
 */
record StepTruth(EpisodeCase episode, List<Set<Integer>> steps) {

    /**
     * A cue for which another step was found.
     *
     * @param found by the program
     */
    record Miss(Cue cue, Set<Integer> steps, int found) {}

    /**
     * @param truths a folder with a file for each episode, of its name
     * @param episodes a folder in or below which the episodes are
     */
    static List<StepTruth> in(Path truths, Path episodes) {
        Map<String, EpisodeCase> known = EpisodeCase.below(episodes).stream()
                .collect(Collectors.toMap(EpisodeCase::name, each -> each, (one, other) -> one, TreeMap::new));
        try (Stream<Path> files = Files.list(truths)) {
            return files.filter(file -> EpisodeCase.name(file).endsWith(".tsv"))
                    .sorted()
                    .map(file -> of(file, known.get(EpisodeCase.name(file).replace(".tsv", ""))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(truths + " cannot be read", e);
        }
    }

    private static StepTruth of(Path file, EpisodeCase episode) {
        try {
            List<Set<Integer>> steps = new ArrayList<>();
            for (String row : Files.readAllLines(file)) {
                steps.add(Arrays.stream(row.split("\t")[1].split("\\|"))
                        .map(Integer::valueOf)
                        .collect(Collectors.toSet()));
            }
            if (steps.size() != episode.cues().size()) {
                throw new IllegalStateException(file + " has " + steps.size() + " rows for "
                        + episode.cues().size() + " cues");
            }
            return new StepTruth(episode, List.copyOf(steps));
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }

    int cues() {
        return steps.size();
    }

    List<Miss> misses() {
        Alignment alignment = Aligner.align(episode.recipe(), List.of(episode.narration()), Pantry.standard());
        List<Miss> misses = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Cue cue = episode.cues().get(i);
            int found = alignment.stepAt(episode.narration().source(), cue.start());
            if (!steps.get(i).contains(found)) {
                misses.add(new Miss(cue, steps.get(i), found));
            }
        }
        return misses;
    }
}
