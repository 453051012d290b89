package org.misecue.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;

/** Says of each benchmark how its time grows with the length of the talk. */
final class GrowthTable {

    private GrowthTable() {}

    /** Nothing where nothing ran. The runner gives each benchmark's results together, in the order of its parameter. */
    static List<String> lines(Collection<RunResult> results) {
        List<String> lines = new ArrayList<>();
        if (results.isEmpty()) {
            return lines;
        }
        lines.add(String.format("%-12s%8s%12s%12s%14s", "benchmark", "times", "ms", "growth", "words/s"));
        String last = "";
        double before = 0;
        for (RunResult result : results) {
            String name = result.getPrimaryResult().getLabel();
            int times = Integer.parseInt(result.getParams().getParam("times"));
            double ms = result.getPrimaryResult().getScore();
            String growth = name.equals(last) ? String.format(Locale.ROOT, "%.1f x", ms / before) : "";
            double wordsPerSecond = 1000.0 * times * InventedNarration.WORDS / ms;
            lines.add(String.format(Locale.ROOT, "%-12s%8d%12.2f%12s%14.0f", name, times, ms, growth, wordsPerSecond));
            last = name;
            before = ms;
        }
        return lines;
    }
}
