package org.misecue.cli;

import picocli.CommandLine.Option;

/** What every command understands. */
final class CommonOptions {

    @Option(
            names = {"-q", "--quiet"},
            description = "No notes and no progress, only results and errors.")
    boolean quiet;

    @Option(names = "--trace", description = "Where misecue itself is at fault, show the details.")
    boolean trace;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;
}
