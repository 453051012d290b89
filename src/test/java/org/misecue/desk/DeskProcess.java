package org.misecue.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.misecue.cli.Misecue;

/**
 * The desk in a process of its own.
 *
 * @param address where it is opened, with the key
 */
public record DeskProcess(Process process, String address) implements AutoCloseable {

    /** Over this folder; it answers already. */
    public static DeskProcess over(Path folder) throws IOException {
        return start(List.of(), folder.toString());
    }

    /** As it is opened by a click, by somebody whose home this is. */
    public static DeskProcess at(Path home) throws IOException {
        return start(List.of("-Duser.home=" + home), "--at-home");
    }

    private static DeskProcess start(List<String> options, String what) throws IOException {
        List<String> words = new ArrayList<>();
        words.add(ProcessHandle.current().info().command().orElse("java"));
        words.add("-XX:TieredStopAtLevel=1");
        words.addAll(options);
        words.addAll(List.of("-cp", System.getProperty("java.class.path"), Misecue.class.getName()));
        words.addAll(List.of("desk", what, "--no-browser"));
        Process process = new ProcessBuilder(words)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        return new DeskProcess(process, process.inputReader(UTF_8).readLine());
    }

    public String origin() {
        return address.substring(0, address.indexOf("/?"));
    }

    /** At once, wherever it is. */
    public void kill() {
        process.destroyForcibly();
    }

    @Override
    public void close() {
        kill();
    }
}
