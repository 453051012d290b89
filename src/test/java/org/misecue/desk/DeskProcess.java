package org.misecue.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import org.misecue.cli.Misecue;

/**
 * The desk in a process of its own.
 *
 * @param address where it is opened, with the key
 */
public record DeskProcess(Process process, String address) implements AutoCloseable {

    /** Over this folder; it answers already. */
    public static DeskProcess over(Path folder) throws IOException {
        Process process = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Misecue.class.getName(),
                        "desk",
                        folder.toString(),
                        "--no-browser")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader out = process.inputReader(UTF_8);
        return new DeskProcess(process, out.readLine());
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
