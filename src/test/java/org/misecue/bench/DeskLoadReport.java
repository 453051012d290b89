package org.misecue.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.misecue.desk.DeskProcess;
import org.misecue.desk.OpenDesk;
import org.misecue.desk.check.CheckClient;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * How long the desk takes to answer when many use it at once: a desk in a process of its own, over a copy of the sample, on
 * loopback, for a bounded time. First each client acts about once a second, as people do who have a page open; then all of
 * them ask again as soon as they were answered. Run by hand, on a machine that has nothing else to do.
 */
@Command(name = "DeskLoadReport", mixinStandardHelpOptions = true)
public final class DeskLoadReport implements Callable<Integer> {

    private static final String[] PIECE = {"HX-Request", "true"};
    private static final String BASE = "/e/sample-project/";
    private static final List<String> WORDS =
            List.of("butter", "fold", "oven", "one seventy", "honey", "hazelnut", "tin");

    @Spec
    private CommandSpec spec;

    @Option(names = "--clients", description = "How many: ${DEFAULT-VALUE}.")
    private int clients = 50;

    @Option(names = "--seconds", description = "For how long each time: ${DEFAULT-VALUE}.")
    private int seconds = 20;

    /** What a client does, and how often of a hundred times. */
    private enum Act {
        PULSE(50),
        BOWLS(6),
        TICK(10),
        FIND(14),
        FILM(10),
        VERDICTS(8),
        TEXT(2);

        private final int share;

        Act(int share) {
            this.share = share;
        }

        static Act any(Random random) {
            int at = random.nextInt(100);
            for (Act act : values()) {
                at -= act.share;
                if (at < 0) {
                    return act;
                }
            }
            return PULSE;
        }
    }

    /** @param micros from the question to the last byte of the answer */
    private record Answered(Act act, long micros, int status) {}

    public static void main(String... args) {
        System.exit(new CommandLine(new DeskLoadReport()).execute(args));
    }

    @Override
    public Integer call() throws IOException, InterruptedException, ExecutionException {
        PrintWriter out = spec.commandLine().getOut();
        Path folder = OpenDesk.sample(Files.createTempDirectory("load"));
        int wrong = 0;
        try (DeskProcess desk = DeskProcess.over(folder)) {
            List<Client> all = new ArrayList<>();
            for (int number = 0; number < clients; number++) {
                all.add(new Client(desk, folder, number));
            }
            all.get(0).untilReady();
            run(all, 0, Duration.ofSeconds(5)); // the first answers of a Java program are its slowest
            for (int pause : new int[] {1000, 0}) {
                List<Answered> answers = run(all, pause, Duration.ofSeconds(seconds));
                wrong += print(answers, pause, out);
            }
        }
        out.flush();
        return wrong == 0 ? 0 : 1;
    }

    private List<Answered> run(List<Client> all, int pause, Duration length)
            throws InterruptedException, ExecutionException {
        ExecutorService people = Executors.newFixedThreadPool(all.size());
        long end = System.nanoTime() + length.toNanos();
        List<Future<List<Answered>>> each = all.stream()
                .map(one -> people.submit(() -> one.work(pause, end)))
                .toList();
        List<Answered> answers = new ArrayList<>();
        for (Future<List<Answered>> one : each) {
            answers.addAll(one.get());
        }
        people.shutdown();
        return answers;
    }

    private int print(List<Answered> answers, int pause, PrintWriter out) {
        out.printf(
                Locale.ROOT,
                "%d clients, %s: %d answers in %d s, milliseconds until an answer was there%n",
                clients,
                pause == 0 ? "each asks again at once" : "each acts about once a second",
                answers.size(),
                seconds);
        out.println("             answers     p50     p95     p99   worst   wrong");
        Map<Act, List<Answered>> acts = new EnumMap<>(Act.class);
        answers.forEach(
                one -> acts.computeIfAbsent(one.act, act -> new ArrayList<>()).add(one));
        acts.forEach((act, of) -> row(act.name().toLowerCase(Locale.ROOT), of, out));
        row("all", answers, out);
        return (int) answers.stream().filter(one -> one.status >= 400).count();
    }

    private static void row(String name, List<Answered> answers, PrintWriter out) {
        List<Long> sorted =
                new ArrayList<>(answers.stream().map(Answered::micros).toList());
        Collections.sort(sorted);
        out.printf(Locale.ROOT, "  %-10s %7d", name, sorted.size());
        for (int share : new int[] {50, 95, 99, 100}) {
            out.printf(Locale.ROOT, " %7.1f", Percentile.of(sorted, share) / 1000.0);
        }
        out.printf(
                Locale.ROOT,
                " %7d%n",
                answers.stream().filter(one -> one.status >= 400).count());
    }

    /** Somebody with a page open. */
    private static final class Client {

        private final OpenDesk desk;
        private final CheckClient producer;
        private final long filmBytes;
        private final Random random;
        private final List<String> keys;

        Client(DeskProcess process, Path folder, int number) throws IOException {
            desk = OpenDesk.elsewhere(process.address()).enter();
            producer = new CheckClient(desk, folder);
            filmBytes = Files.size(folder.resolve("footage/take-1.mp4"));
            random = new Random(number);
            keys = desk.tickable(BASE + "bowls");
        }

        /** The film is read once, and an index made. */
        void untilReady() {
            producer.page("check/sheet");
            desk.get(BASE + "find/moments?q=butter", PIECE);
        }

        List<Answered> work(int pause, long end) throws IOException, InterruptedException {
            List<Answered> answers = new ArrayList<>();
            while (System.nanoTime() < end) {
                Act act = Act.any(random);
                HttpRequest request = request(act);
                long start = System.nanoTime();
                HttpResponse<byte[]> answer = desk.client().send(request, BodyHandlers.ofByteArray());
                answers.add(new Answered(act, (System.nanoTime() - start) / 1000, answer.statusCode()));
                if (pause > 0) {
                    Thread.sleep(pause / 2 + random.nextInt(pause));
                }
            }
            return answers;
        }

        private HttpRequest request(Act act) {
            return switch (act) {
                case PULSE -> piece("pulse");
                case BOWLS -> piece("bowls");
                case TICK -> tick();
                case FIND -> piece("find/moments?q=" + encoded(WORDS.get(random.nextInt(WORDS.size()))));
                case FILM -> part();
                case VERDICTS -> piece("check/sheet");
                case TEXT -> piece("text");
            };
        }

        private HttpRequest piece(String path) {
            return desk.request(BASE + path, PIECE).build();
        }

        private HttpRequest tick() {
            String what = random.nextBoolean() ? "tick" : "untick";
            String key = keys.get(random.nextInt(keys.size()));
            return desk.form(BASE + "bowls/" + what, Map.of("key", key), PIECE).build();
        }

        /** As a player asks for the next second or two. */
        private HttpRequest part() {
            long from = random.nextLong(filmBytes / 2);
            return desk.request(BASE + "media/take-1.mp4", "Range", "bytes=" + from + "-" + (from + 250_000))
                    .build();
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, UTF_8);
        }
    }
}
