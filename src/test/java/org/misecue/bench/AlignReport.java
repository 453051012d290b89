package org.misecue.bench;

import java.nio.file.Path;
import java.util.List;

/**
 * For how many cues the step is found that is on while they are said. Told a folder of truths and one of episodes; with
 * {@code --rows} it prints the cues that are not, which nobody should look at for the half that is held back.
 */
public final class AlignReport {

    private AlignReport() {}

    public static void main(String... args) {
        if (args.length < 2) {
            System.err.println("expected a folder of truths, a folder of episodes, and --rows to see what is wrong");
            System.exit(2);
        }
        boolean rows = List.of(args).contains("--rows");
        int cues = 0;
        int missed = 0;
        for (StepTruth truth : StepTruth.in(Path.of(args[0]), Path.of(args[1]))) {
            List<StepTruth.Miss> misses = truth.misses();
            cues += truth.cues();
            missed += misses.size();
            System.out.printf(
                    "%s: %d of %d cues%n", truth.episode().name(), truth.cues() - misses.size(), truth.cues());
            if (rows) {
                misses.forEach(miss -> System.out.printf(
                        "  %7.1f %s found %d: %s%n",
                        miss.cue().start().toMillis() / 1e3,
                        miss.steps(),
                        miss.found(),
                        miss.cue().text()));
            }
        }
        System.out.printf("all: %d of %d cues, %.3f%n", cues - missed, cues, (cues - missed) / (double) cues);
    }
}
