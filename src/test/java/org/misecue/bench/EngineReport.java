package org.misecue.bench;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.misecue.spoken.Mechanism;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * How right the engine is, over case folders that hold {@code recipe.*}, {@code narration.*} and {@code truth.json}. All
 * cases are compared in this process, so that a change shows in seconds.
 */
@Command(name = "EngineReport", mixinStandardHelpOptions = true)
public final class EngineReport implements Callable<Integer> {

    private static final List<Path> USUAL =
            List.of(Path.of("src/test/resources/org/misecue/compare/episodes"), Path.of("../shared/narrations"));

    @Spec
    private CommandSpec spec;

    @Parameters(description = "Case folders, or folders above them.")
    private List<Path> folders = new ArrayList<>();

    @Option(names = "--rows", description = "Print each row that is wrong.")
    private boolean rows;

    @Option(names = "--recut", description = "Cut the words into new cues of this many; verdicts must hold.")
    private int recut;

    @Option(names = "--mutate", description = "Change one written amount at a time; each must come out as differing.")
    private boolean mutate;

    @Option(names = "--ablation", description = "Switch one mechanism off at a time.")
    private boolean ablation;

    public static void main(String... args) {
        System.exit(new CommandLine(new EngineReport()).execute(args));
    }

    @Override
    public Integer call() {
        List<EpisodeCase> cases = cases();
        PrintWriter out = spec.commandLine().getOut();
        if (mutate) {
            Mutations.report(cases, rows).forEach(out::println);
        }
        if (ablation) {
            Ablation.table(cases).forEach(out::println);
        }
        if (!mutate && !ablation) {
            report(Score.of(cases, EnumSet.allOf(Mechanism.class)), out);
        }
        out.flush();
        return 0;
    }

    private List<EpisodeCase> cases() {
        Stream<Path> parents = folders.isEmpty() ? USUAL.stream().filter(Files::isDirectory) : folders.stream();
        return parents.flatMap(parent -> EpisodeCase.below(parent).stream())
                .map(one -> recut > 0 ? Recut.of(one, recut) : one)
                .toList();
    }

    private void report(Score score, PrintWriter out) {
        if (rows) {
            score.cases().stream().flatMap(one -> one.wrong().stream()).forEach(line -> out.println("  " + line));
        }
        score.failures().forEach(line -> out.println("FAILED " + line));
        score.dangerous().forEach(line -> out.println("DANGEROUS " + line));
        out.println(score.confusion());
        out.println(score.line());
    }
}
