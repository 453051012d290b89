package org.misecue.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How long {@code grep -ri} looks for the same words in the same files, in milliseconds. */
record Grep(double clock, double processor) {

    /** The second time, so that the files are in memory. */
    static Grep mean(List<String> queries, Path folder) {
        queries.subList(0, 2).forEach(query -> look(query, folder));
        List<Grep> looked = queries.stream().map(query -> look(query, folder)).toList();
        return new Grep(
                looked.stream().mapToDouble(Grep::clock).average().orElseThrow(),
                looked.stream().mapToDouble(Grep::processor).average().orElseThrow());
    }

    /** Through a pipe, since it stops at the first match where nobody listens. */
    private static Grep look(String query, Path folder) {
        List<String> command = new ArrayList<>(List.of(
                "bash",
                "-c",
                "TIMEFORMAT='%R %U %S'; time grep -ri --exclude-dir=.misecue \"$@\" | cat > /dev/null",
                "grep"));
        List<String> words = query.startsWith("\"") ? List.of(query.replace("\"", "")) : List.of(query.split(" "));
        words.forEach(word -> command.addAll(List.of("-e", word)));
        command.add(folder.toString());
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String[] times = new String(process.getInputStream().readAllBytes(), UTF_8)
                    .strip()
                    .split(" ");
            return new Grep(
                    1000 * Double.parseDouble(times[0]),
                    1000 * (Double.parseDouble(times[1]) + Double.parseDouble(times[2])));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
