package org.misecue.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.misecue.compare.Picture;
import org.misecue.episode.Episode;
import org.misecue.search.Hit;
import org.misecue.search.MomentIndex;
import org.misecue.worktop.Index;
import org.misecue.worktop.OwnPantry;
import org.misecue.worktop.Worktop;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * How often the first moment found is the right one: for every amount of an ingredient that is said in the cases, and for
 * keywords whose moments somebody judged by reading. Half of the cases are for looking at, the other half are only
 * counted. Run by hand.
 */
@Command(name = "FindReport", mixinStandardHelpOptions = true)
public final class FindReport implements Callable<Integer> {

    private static final List<Path> USUAL =
            List.of(Path.of("src/test/resources/org/misecue/compare/episodes"), Path.of("../shared/narrations"));
    /** As the scorer of the narrations has it: in the cue, or so near in seconds. */
    private static final double NEAR = 3;
    /** Who goes to a name and hears its amount so soon after it has found that moment. */
    private static final double BEFORE = 10;

    private static final int LOOKED_AT = 10;

    @Spec
    private CommandSpec spec;

    @Option(names = "--rows", description = "Print what is not first, of the half that may be looked at.")
    private boolean rows;

    public static void main(String... args) {
        System.exit(new CommandLine(new FindReport()).execute(args));
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Map<String, List<KeywordQuery>> keywords = KeywordQuery.all();
        Map<String, Ranks> ranks = new LinkedHashMap<>();
        int number = 0;
        for (EpisodeCase one : USUAL.stream()
                .filter(Files::isDirectory)
                .flatMap(folder -> EpisodeCase.below(folder).stream())
                .toList()) {
            boolean seen = number++ % 2 == 0;
            Path episode = indexed(one);
            for (KeywordQuery query : amounts(one)) {
                rank("amounts", seen, one, query, episode, ranks, out);
            }
            for (KeywordQuery query : keywords.getOrDefault(one.name(), List.of())) {
                rank("keywords", seen, one, query, episode, ranks, out);
            }
            delete(episode);
        }
        ranks.forEach((name, found) -> out.println(name + ": " + found.line()));
        out.flush();
        return 0;
    }

    private void rank(
            String kind,
            boolean seen,
            EpisodeCase of,
            KeywordQuery query,
            Path episode,
            Map<String, Ranks> ranks,
            PrintWriter out) {
        List<Hit> hits = MomentIndex.find(episode, query.query(), LOOKED_AT).hits();
        int rank = 0;
        for (int i = 0; i < hits.size() && rank == 0; i++) {
            rank = isAt(hits.get(i), query.at(), of.cueStarts()) ? i + 1 : 0;
        }
        ranks.computeIfAbsent(kind + (seen ? ", looked at" : ", unseen"), name -> new Ranks())
                .ranks
                .add(rank);
        if (rows && seen && rank != 1) {
            out.println(kind + " " + of.name() + " \"" + query.query() + "\" at " + query.at() + " is "
                    + (rank == 0 ? "not found" : "number " + rank)
                    + hits.stream().findFirst().map(FindReport::told).orElse(""));
        }
    }

    private static String told(Hit hit) {
        return "; first is " + hit.kind() + " at " + hit.at().toMillis() / 1000.0 + ": " + hit.quote();
    }

    private static boolean isAt(Hit hit, List<Double> right, List<Double> cues) {
        double at = hit.at().toMillis() / 1000.0;
        return right.stream().anyMatch(cue -> {
            Optional<Double> next = cues.stream().filter(start -> start > cue).findFirst();
            return at >= cue - BEFORE && at <= next.orElse(cue + 15) + NEAR;
        });
    }

    /** "ingredient amount" as it was said; things that are counted have their number first. */
    private static List<KeywordQuery> amounts(EpisodeCase one) {
        Map<String, List<Double>> moments = new LinkedHashMap<>();
        one.truth().written().stream()
                .filter(row -> !row.at().isEmpty() && row.spoken().matches("[\\d.]+ \\S.*"))
                .forEach(row -> moments.computeIfAbsent(query(row), query -> new ArrayList<>())
                        .addAll(row.at()));
        return moments.entrySet().stream()
                .map(entry -> new KeywordQuery(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static String query(Row row) {
        // Nobody types a third as a decimal number.
        String spoken = row.spoken().replace("0.3333", "1/3").replace("0.6667", "2/3");
        return spoken.endsWith(" each")
                ? spoken.replace(" each", " ") + row.ingredient()
                : row.ingredient() + " " + spoken;
    }

    private static Path indexed(EpisodeCase one) {
        try {
            Path folder = Files.createTempDirectory("misecue-find");
            try (Stream<Path> files = Files.list(one.folder())) {
                for (Path file : files.toList()) {
                    String name = EpisodeCase.name(file);
                    if (name.startsWith("recipe.")) {
                        Files.copy(file, folder.resolve(name));
                    } else if (name.startsWith("narration.")) {
                        Path to = folder.resolve("narration").resolve("main" + name.substring("narration".length()));
                        Files.createDirectories(to.getParent());
                        Files.copy(file, to);
                    }
                }
            }
            OwnPantry own = new OwnPantry(Optional.empty(), folder);
            new Index(new Worktop(Episode.locate(folder), own, own::read, worktop -> Picture.NONE)).build();
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(one.folder() + " cannot be indexed", e);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(file);
            }
        }
    }

    /** Where the right moment stood; 0 for nowhere. */
    private static final class Ranks {
        final List<Integer> ranks = new ArrayList<>();

        String line() {
            long first = ranks.stream().filter(rank -> rank == 1).count();
            double reciprocal = ranks.stream()
                    .mapToDouble(rank -> rank == 0 ? 0 : 1.0 / rank)
                    .average()
                    .orElse(0);
            return String.format(
                    Locale.ROOT,
                    "%d of %d first (R@1 %.3f), MRR %.3f",
                    first,
                    ranks.size(),
                    (double) first / Math.max(1, ranks.size()),
                    reciprocal);
        }
    }
}
