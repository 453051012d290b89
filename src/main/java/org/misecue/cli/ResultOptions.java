package org.misecue.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a result goes and in which form. */
final class ResultOptions {

    @Option(names = "--json", description = "As JSON, for other programs.")
    boolean json;

    @Nullable
    @Option(names = "--out", paramLabel = "FILE", description = "Write to this file instead of the screen.")
    Path out;
}
