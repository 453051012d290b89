package org.misecue.bench;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.misecue.desk.InBrowser;
import org.misecue.desk.OpenDesk;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * How long it takes on the desk from the press of a key until the moments are painted, in a browser, over an episode or an
 * archive. Words are typed as people type them; the last key of each query is measured. Run by hand, on a machine that has
 * nothing else to do.
 */
@Command(name = "DeskSearchReport", mixinStandardHelpOptions = true)
public final class DeskSearchReport implements Callable<Integer> {

    /** Waits in the page for the moments of these words, and then for the picture after them. */
    private static final String WATCH = """
            words => {
              window.painted = new Promise(resolve => {
                let pressed;
                addEventListener("keydown", event => { pressed = event.timeStamp; }, { capture: true });
                const watch = new MutationObserver(() => {
                  if (document.querySelector("#moments .tally")?.dataset.words === words) {
                    watch.disconnect();
                    requestAnimationFrame(() => {
                      const after = new MessageChannel();
                      after.port1.onmessage = () => resolve(performance.now() - pressed);
                      after.port2.postMessage("");
                    });
                  }
                });
                watch.observe(document.getElementById("moments"), { childList: true, subtree: true });
              });
            }
            """;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1", description = "An episode, or an archive of them.")
    private Path folder = Path.of(".");

    @Option(names = "--queries", description = "How many queries are measured: ${DEFAULT-VALUE}.")
    private int queries = 200;

    @Option(names = "--seed", description = "Which words are asked: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(names = "--millis", description = "Between two keys: ${DEFAULT-VALUE}.")
    private int millis = 120;

    public static void main(String... args) {
        System.exit(new CommandLine(new DeskSearchReport()).execute(args));
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        List<String> asked = queries();
        try (OpenDesk desk = OpenDesk.over(folder)) {
            Page page = InBrowser.page(desk);
            page.navigate(desk.origin() + (isEpisode(folder) ? path() : "/find"));
            page.locator("#indexing progress").waitFor(gone());
            List<Double> times = new ArrayList<>();
            for (String words : asked) {
                times.add(time(page, words));
            }
            print(times, out);
            page.context().close();
        }
        out.flush();
        return 0;
    }

    private static Locator.WaitForOptions gone() {
        return new Locator.WaitForOptions()
                .setState(WaitForSelectorState.DETACHED)
                .setTimeout(3_600_000);
    }

    private String path() {
        return "/e/" + folder.toAbsolutePath().normalize().getFileName() + "/find";
    }

    private double time(Page page, String words) {
        page.locator("#q").fill("");
        page.locator("#q")
                .pressSequentially(
                        words.substring(0, words.length() - 1),
                        new Locator.PressSequentiallyOptions().setDelay(millis));
        page.waitForTimeout(millis);
        page.evaluate(WATCH, words);
        page.keyboard().type(words.substring(words.length() - 1));
        return ((Number) page.evaluate("window.painted")).doubleValue();
    }

    private static void print(List<Double> times, PrintWriter out) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        out.printf(Locale.ROOT, "%d queries, milliseconds from key to picture%n", sorted.size());
        for (int share : new int[] {50, 95, 99, 100}) {
            out.printf(Locale.ROOT, "p%-3d %6.1f%n", share, Percentile.of(sorted, share));
        }
    }

    /** One to three words that follow each other somewhere, each fourth time with a letter left out. */
    private List<String> queries() throws IOException {
        List<Path> narrations;
        try (Stream<Path> files = Files.walk(folder)) {
            narrations = files.filter(file -> file.toString().endsWith(".vtt"))
                    .sorted()
                    .toList();
        }
        Random random = new Random(seed);
        List<String> asked = new ArrayList<>();
        while (asked.size() < queries) {
            List<String> lines = Files.readAllLines(narrations.get(random.nextInt(narrations.size())));
            String[] said = lines.get(random.nextInt(lines.size())).split("[^a-z]+", -1);
            int many = 1 + random.nextInt(3);
            int from = random.nextInt(said.length);
            String words = String.join(" ", List.of(said).subList(from, Math.min(said.length, from + many)))
                    .strip();
            if (words.length() > 4) {
                asked.add(asked.size() % 4 == 0 ? words.substring(0, 2) + words.substring(3) : words);
            }
        }
        return asked;
    }

    private static boolean isEpisode(Path folder) {
        return Files.isDirectory(folder.resolve("narration"));
    }
}
