package org.misecue.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.narration.Cue;
import org.misecue.narration.NarrationReader;
import org.misecue.search.ArchiveIndex;
import org.misecue.search.ArchiveWriter;
import org.misecue.search.Passage;
import org.misecue.search.Shelved;
import org.misecue.worktop.ArchiveShelf;

/**
 * How fast a whole archive is indexed, searched and kept up to date, over invented episodes. It is told how many, and in
 * which folder they are made; what is there already is used again. Another machine's figures say little: compare those of
 * one run.
 */
public final class ArchiveReport {

    private static final double HOURS_PER_EPISODE = 0.2;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int COMPARED = 1000;
    private static final String GROWING = "growing";
    private static final int TIMES = 5;
    private static final int WARMING = 10;
    private static final int ROUNDS = 21;

    private final Path folder;
    private final Path archive;
    private final int episodes;

    private ArchiveReport(Path folder, int episodes) {
        this.folder = folder;
        this.archive = folder.resolve("archive-" + episodes);
        this.episodes = episodes;
    }

    public static void main(String[] args) throws IOException {
        if (args.length < 2) {
            System.err.println("expected a folder, how many episodes, and --said where recipes are left out");
            System.exit(2);
        }
        new ArchiveReport(Path.of(args[0]), Integer.parseInt(args[1]))
                .run(List.of(args).contains("--said"));
    }

    private void run(boolean saidOnly) throws IOException {
        if (!Files.exists(archive)) {
            SyntheticArchive.write(archive, episodes, 1);
        }
        System.out.printf("%d episodes, %.0f hours of narration%n", episodes, episodes * HOURS_PER_EPISODE);
        writing();
        if (!saidOnly) {
            try (ArchiveShelf shelf = ArchiveShelf.open(archive, Optional.empty())) {
                freshening(shelf);
            }
            searching(archive);
        }
        updating();
        if (saidOnly) {
            searching(folder.resolve(GROWING));
        }
    }

    /** The writing alone, against Lucene's own, over the same cues in memory, in turn and when both are warm. */
    private void writing() throws IOException {
        List<List<Passage>> read = new ArrayList<>();
        for (Path episode : folders().subList(0, Math.min(episodes, COMPARED))) {
            read.add(passages(episode));
        }
        double[] bare = new double[ROUNDS];
        double[] ours = new double[ROUNDS];
        double[] speed = new double[ROUNDS];
        for (int i = -WARMING; i < ROUNDS; i++) {
            double lucene = processorSeconds(() -> BareLucene.index(read, emptied("bare")));
            double all = processorSeconds(() -> put(emptied("ours"), read));
            if (i >= 0) {
                bare[i] = lucene;
                ours[i] = all;
                speed[i] = lucene / all;
            }
        }
        for (double[] figures : List.of(bare, ours, speed)) {
            Arrays.sort(figures);
        }
        System.out.printf(
                "indexing %d episodes: Lucene's StandardAnalyzer %.2f s of a processor, ours %.2f s: %.2f of its speed"
                        + " (%.2f to %.2f in %d rounds); %.1f and %.1f MB%n",
                read.size(),
                percentile(bare, 50),
                percentile(ours, 50),
                percentile(speed, 50),
                speed[0],
                speed[ROUNDS - 1],
                ROUNDS,
                megabytes(folder.resolve("bare")),
                megabytes(folder.resolve("ours")));
    }

    /** From files to an index that can be asked, with recipes read and steps found. */
    private void freshening(ArchiveShelf shelf) {
        double first = seconds(() -> shelf.freshen((done, changed, episode) -> {}));
        double again = seconds(() -> shelf.freshen((done, changed, episode) -> {}));
        System.out.printf(
                "from files, steps and all: %.1f s, %.1f ms an episode; again when nothing has changed: %.2f s%n",
                first, first * 1000 / episodes, again);
    }

    private void searching(Path indexed) {
        try (ArchiveIndex index = ArchiveIndex.open(indexed)) {
            searching(index);
        }
        double size = megabytes(indexed.resolve(".misecue"));
        System.out.printf(
                "index: %.1f MB, %.3f MB for an hour of narration%n", size, size / (episodes * HOURS_PER_EPISODE));
    }

    private void searching(ArchiveIndex index) {
        List<String> queries = ArchiveQueries.all();
        for (int i = 0; i < TIMES; i++) {
            queries.forEach(query -> index.find(query, 10)); // warm
        }
        double[] millis = new double[queries.size() * TIMES];
        double[] processor = new double[millis.length];
        for (int i = 0; i < millis.length; i++) {
            String query = queries.get(i / TIMES);
            long before = THREADS.getCurrentThreadCpuTime();
            millis[i] = 1000 * seconds(() -> index.find(query, 10));
            processor[i] = (THREADS.getCurrentThreadCpuTime() - before) / 1e6;
        }
        slowest(queries, processor);
        Grep grep = Grep.mean(queries.subList(0, 10), archive);
        told("on the clock", millis, grep.clock());
        told("of a processor", processor, grep.processor());
    }

    private static void told(String what, double[] millis, double grep) {
        Arrays.sort(millis);
        System.out.printf(
                "query, ms %s: p50 %.2f, p90 %.2f, p99 %.2f; grep -ri in the mean %.0f: p50 1/%.0f, p99 1/%.0f of it%n",
                what,
                percentile(millis, 50),
                percentile(millis, 90),
                percentile(millis, 99),
                grep,
                grep / percentile(millis, 50),
                grep / percentile(millis, 99));
    }

    private static void slowest(List<String> queries, double[] millis) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < queries.size(); i++) {
            double[] times = Arrays.copyOfRange(millis, i * TIMES, (i + 1) * TIMES);
            Arrays.sort(times);
            told.add(String.format("%8.2f ms  %s", times[TIMES / 2], queries.get(i)));
        }
        told.stream().sorted((a, b) -> b.compareTo(a)).limit(5).forEach(System.out::println);
    }

    /** One episode, written and found again, while the archive grows. */
    private void updating() throws IOException {
        List<Path> folders = folders();
        Path growing = emptied(GROWING);
        int there = 0;
        for (int size : new int[] {100, 1000, 10_000}) {
            if (size > episodes) {
                return;
            }
            while (there < size) {
                List<List<Passage>> next = new ArrayList<>();
                for (Path episode : folders.subList(there, Math.min(size, there + 500))) {
                    next.add(passages(episode));
                }
                put(growing, next, there);
                there += next.size();
            }
            List<Passage> changed = passages(folders.get(size / 2));
            double[] millis = new double[50];
            try (ArchiveIndex index = ArchiveIndex.open(growing)) {
                for (int i = 0; i < millis.length; i++) {
                    String name = "episode-" + i * (size / millis.length);
                    millis[i] = 1000 * seconds(() -> index.update(name, changed, List.of()));
                }
            }
            Arrays.sort(millis);
            System.out.printf(
                    "updating one of %d episodes: median %.0f ms, worst of %d: %.0f ms%n",
                    size, percentile(millis, 50), millis.length, millis[millis.length - 1]);
        }
    }

    private List<Path> folders() throws IOException {
        try (Stream<Path> files = Files.list(archive)) {
            return files.filter(file -> Files.exists(file.resolve("recipe.md")))
                    .sorted()
                    .toList();
        }
    }

    private static List<Passage> passages(Path episode) {
        List<Cue> cues = NarrationReader.read(episode.resolve("narration/main.vtt"), "narration/main.vtt")
                .cues();
        return cues.stream()
                .map(cue -> Passage.of("narration/main.vtt", cue, cues.indexOf(cue) / 20))
                .toList();
    }

    private static void put(Path where, List<List<Passage>> episodes) {
        put(where, episodes, 0);
    }

    private static void put(Path where, List<List<Passage>> episodes, int from) {
        try (ArchiveIndex index = ArchiveIndex.open(where);
                ArchiveWriter writer = index.writer()) {
            for (int i = 0; i < episodes.size(); i++) {
                writer.put("episode-" + (from + i), new Shelved("", List.of()), episodes.get(i), List.of());
            }
        }
    }

    private Path emptied(String name) {
        Path path = folder.resolve(name);
        try {
            if (Files.exists(path)) {
                try (Stream<Path> files = Files.walk(path)) {
                    for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                        Files.delete(file);
                    }
                }
            }
            return Files.createDirectories(path);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double megabytes(Path path) {
        try (Stream<Path> files = Files.walk(path)) {
            return files.filter(Files::isRegularFile)
                            .mapToLong(file -> file.toFile().length())
                            .sum()
                    / 1e6;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double percentile(double[] sorted, int percent) {
        return sorted[Math.min(sorted.length - 1, sorted.length * percent / 100)];
    }

    private static double seconds(Runnable work) {
        long from = System.nanoTime();
        work.run();
        return (System.nanoTime() - from) / 1e9;
    }

    /** Of all processors and threads: the same whoever else is at the machine. */
    private static double processorSeconds(Runnable work) {
        OperatingSystemMXBean machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        long from = machine.getProcessCpuTime();
        work.run();
        return (machine.getProcessCpuTime() - from) / 1e9;
    }
}
