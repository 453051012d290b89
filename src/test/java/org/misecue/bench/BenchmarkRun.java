package org.misecue.bench;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks of one class with JMH's own options. */
final class BenchmarkRun {

    private BenchmarkRun() {}

    /** What was measured; nothing where only help was asked for. */
    static Collection<RunResult> of(Class<?> benchmarks, String... args)
            throws RunnerException, CommandLineOptionException, IOException {
        CommandLineOptions asked = new CommandLineOptions(args);
        if (asked.shouldHelp()) {
            asked.showHelp();
            return List.of();
        }
        OptionsBuilder options = new OptionsBuilder();
        options.parent(asked);
        if (asked.getIncludes().isEmpty()) {
            options.include(benchmarks.getName().replace(".", "\\."));
        }
        return new Runner(options.build()).run();
    }
}
