package org.misecue.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.misecue.shown.LanguageData;
import org.misecue.shown.SecondBySecond;
import org.misecue.shown.ShownText;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * How right cards in films are read, over invented films whose cards are known, and how much is read for it. Run by
 * hand; another seed makes other films.
 */
@Command(name = "CardReport", mixinStandardHelpOptions = true)
public final class CardReport implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--seed", description = "From which the films are invented.")
    private long seed = 1;

    @Option(names = "--films", description = "How many, each with two or three cards.")
    private int films = 30;

    @Option(names = "--rows", description = "Prints what is not right.")
    private boolean rows;

    @Option(names = "--keep", description = "A folder where the films stay, to use them again.")
    private Path keep = Path.of("");

    @Option(names = "--every-second", description = "Measures the reading of each second's frame too.")
    private boolean everySecond;

    public static void main(String... args) {
        System.exit(new CommandLine(new CardReport()).execute(args));
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        LanguageData data = LanguageData.find(System.getenv()).orElseThrow();
        Path folder = keep.toString().isEmpty() ? Files.createTempDirectory("misecue-cards") : keep;
        Files.createDirectories(folder);
        CardScore score = new CardScore();
        Duration length = Duration.ZERO;
        long parts = 0;
        double seconds = 0;
        double secondBySecond = 0;
        List<CardFilm> all = new CardMaker(seed).films(films);
        for (CardFilm film : all) {
            Path file = folder.resolve(film.name() + "-" + seed + ".mp4");
            if (!Files.exists(file)) {
                film.write(file);
            }
            long begin = System.nanoTime();
            ShownText shown = org.misecue.shown.Cards.read(file, film.name(), data, at -> {});
            seconds += (System.nanoTime() - begin) / 1e9;
            score.add(film, shown.cards());
            parts += shown.framesRead();
            length = length.plus(shown.length());
            if (everySecond) {
                begin = System.nanoTime();
                SecondBySecond.read(file, data);
                secondBySecond += (System.nanoTime() - begin) / 1e9;
            }
            if (keep.toString().isEmpty()) {
                Files.delete(file);
            }
        }
        print(out, score, length, parts, seconds, secondBySecond);
        out.flush();
        return 0;
    }

    private void print(
            PrintWriter out, CardScore score, Duration length, long parts, double seconds, double secondBySecond) {
        if (rows) {
            score.rows.forEach(out::println);
        }
        double minutes = length.toMillis() / 60_000.0;
        line(
                out,
                "seed %d: %d films, %.1f minutes, %d cards, %d of them found",
                seed,
                films,
                minutes,
                score.cards,
                score.cardsFound);
        line(
                out,
                "amounts with unit: %d right of %d (%.3f), %d of them without doubt",
                score.right,
                score.amounts,
                (double) score.right / score.amounts,
                score.rightAndSure);
        line(out, "in lines marked doubtful: %d", score.doubtful);
        line(out, "wrong and not marked doubtful: %d", score.wrongAndSure);
        line(out, "lines that are not there: %d", score.falseLines);
        line(
                out,
                "first moment off by ms: median %d, largest %d; last moment: median %d, largest %d",
                middle(score.startErrors),
                most(score.startErrors),
                middle(score.endErrors),
                most(score.endErrors));
        line(out, "parts read per minute of film: %.1f; a minute takes %.2f s", parts / minutes, seconds / minutes);
        if (everySecond) {
            line(
                    out,
                    "every second's frame read the same way: %.2f s a minute, %.1f times as long",
                    secondBySecond / minutes,
                    secondBySecond / seconds);
        }
    }

    private static void line(PrintWriter out, String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }

    private static long middle(List<Long> values) {
        return values.isEmpty() ? 0 : values.stream().sorted().toList().get(values.size() / 2);
    }

    private static long most(List<Long> values) {
        return values.stream().mapToLong(Long::longValue).max().orElse(0);
    }
}
