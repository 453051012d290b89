package org.misecue.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Runs commands inside the test, in a folder of its own, and looks at what they leave. */
final class OnStage {

    private final Path folder;

    OnStage(Path folder) {
        this.folder = folder;
    }

    /** What a command said and how it ended. */
    record Ran(int exit, String out, String err) {}

    Ran run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Misecue.run(
                args,
                new Stage(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        folder,
                        false));
        String home = folder + "/";
        return new Ran(
                exit,
                out.toString(StandardCharsets.UTF_8).replace(home, ""),
                err.toString(StandardCharsets.UTF_8).replace(home, ""));
    }

    Path path(String name) {
        return folder.resolve(name);
    }

    /** Writes a file, with the folders on its way. */
    Path write(String name, String text) {
        try {
            Path path = path(name);
            Files.createDirectories(path.getParent());
            return Files.writeString(path, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The sample episode without anything that was made of it. */
    OnStage withSample() {
        copy(Path.of("sample-project"), path("sample-project"));
        return this;
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = from.relativize(file).toString();
                if (name.startsWith("out") || name.startsWith(".misecue")) {
                    continue;
                }
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to.resolve(name));
                } else {
                    Files.copy(file, to.resolve(name));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every file below the folder with a fingerprint of what is in it. */
    Map<String, Integer> contents() {
        Map<String, Integer> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                contents.put(folder.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return contents;
    }
}
