package org.misecue.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.Place;
import org.misecue.scale.Batch;
import picocli.CommandLine.Option;

/** Another size for a recipe: one of these. */
final class BatchOptions {

    @Nullable
    @Option(names = "--times", paramLabel = "N", description = "So many times the written batch, such as 2 or ½.")
    private String times;

    @Nullable
    @Option(names = "--makes", paramLabel = "YIELD", description = "Enough for a yield, such as 18 or \"18 buns\".")
    private String makes;

    @Nullable
    @Option(names = "--tin", paramLabel = "TIN", description = "Another tin, such as \"23 cm round\".")
    private String tin;

    @Nullable
    @Option(
            names = "--have",
            paramLabel = "REST",
            description = "What is left of one ingredient, such as \"310 g butter\".")
    private String have;

    /** The batch that is asked for; empty where none is. */
    Optional<Batch> batch() {
        if (times != null) {
            return Optional.of(Batch.times(Place.of("--times"), times));
        }
        if (makes != null) {
            return Optional.of(Batch.makes(Place.of("--makes"), makes));
        }
        if (tin != null) {
            return Optional.of(Batch.tin(Place.of("--tin"), tin));
        }
        return have == null ? Optional.empty() : Optional.of(Batch.left(Place.of("--have"), have));
    }
}
