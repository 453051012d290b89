package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The image of {@code mvn -Pdist package}, on a machine that seems to have no Java, held against the class path. */
class ImageIT {

    private static final List<String> COMMANDS = List.of(
            "--version",
            "read ep",
            "prep ep",
            "shots ep",
            "day ep",
            "index ep",
            "find butter -e ep",
            "compare ep",
            "describe ep",
            "captions ep",
            "markers ep",
            "log ep",
            "footage ep --sheets",
            "make ep",
            "read nowhere");

    private final String image = System.getProperty("misecue.image", "");

    @TempDir
    Path temp;

    private record Ran(int exit, String out, String err) {}

    @BeforeEach
    void an_image_was_made() {
        assumeTrue(Files.isExecutable(starter()), "skipped: mvn -Pdist package has made no image at " + starter());
    }

    private Path starter() {
        return Path.of(image, "bin/misecue");
    }

    @Test
    void tells_and_makes_what_the_class_path_tells_and_makes() throws Exception {
        Path bare = episode("bare");
        Path usual = episode("usual");
        for (String command : COMMANDS) {
            Ran fromImage = run(bare, List.of(starter().toString()), command);
            Ran fromClassPath = run(usual, classPath(), command);
            assertThat(fromImage).as(command).isEqualTo(fromClassPath);
            assertThat(fromImage.exit()).as(command + ": " + fromImage.err()).isNotEqualTo(ExitCode.OUR_FAULT);
        }
        Map<String, Integer> made = bytes(bare);
        assertThat(made).isEqualTo(bytes(usual)).containsKey("out/prep.pdf").containsKey("out/compare.json");
        assertThat(made.keySet()).anyMatch(name -> name.startsWith("out/stills/"));
    }

    private Path episode(String name) throws IOException {
        Path folder = temp.resolve(name);
        Path from = Path.of("sample-project");
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path part = from.relativize(file);
                if (!part.startsWith("out") && !part.startsWith(".misecue")) {
                    Path to = folder.resolve("ep").resolve(part);
                    Files.createDirectories(to.getParent());
                    Files.copy(file, to);
                }
            }
        }
        return folder;
    }

    private static List<String> classPath() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return List.of(java, "-cp", classes, "org.misecue.cli.Misecue");
    }

    /** With no path on which a Java could be found. */
    private Ran run(Path folder, List<String> program, String command) throws Exception {
        List<String> words = new ArrayList<>(program);
        words.addAll(List.of(command.split(" ")));
        Path out = temp.resolve("out.txt");
        Path err = temp.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(words)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().keySet().removeAll(List.of("JAVA_HOME", "MISECUE_OPTS", "JAVA_TOOL_OPTIONS"));
        builder.environment().put("PATH", temp.resolve("nothing here").toString());
        int exit = builder.start().waitFor();
        return new Ran(exit, text(out), text(err));
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    /** What lies in out/, each file with a sum of its bytes. */
    private static Map<String, Integer> bytes(Path folder) throws IOException {
        Map<String, Integer> sums = new TreeMap<>();
        Path episode = folder.resolve("ep");
        try (Stream<Path> files = Files.walk(episode.resolve("out"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = episode.relativize(file).toString().replace('\\', '/');
                sums.put(name, Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return sums;
    }
}
