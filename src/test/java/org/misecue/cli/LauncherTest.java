package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The shell script that starts the program, with a stand-in for Java that prints what it is given, one word to a line. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    private static final String STAND_IN = "#!/bin/sh\nprintf '%s\\n' \"$@\"\n";

    private static final String MAIN = "org.misecue.cli.Misecue";

    @TempDir
    Path temp;

    private Path launcher;
    private Path javaHome;

    @BeforeEach
    void a_distribution_and_a_java() throws IOException {
        temp = temp.toRealPath();
        launcher = temp.resolve("a place/misecue/bin/misecue");
        Files.createDirectories(launcher.getParent());
        Files.createDirectories(temp.resolve("a place/misecue/lib"));
        Files.copy(Path.of("src/main/dist/bin/misecue"), launcher);
        executable(launcher);
        javaHome = temp.resolve("java home");
        Files.createDirectories(javaHome.resolve("bin"));
        executable(Files.writeString(javaHome.resolve("bin/java"), STAND_IN));
        release("17.0.15");
    }

    private static void executable(Path file) {
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private void release(String version) throws IOException {
        Files.writeString(
                javaHome.resolve("release"), "IMPLEMENTOR=\"X\"\nJAVA_VERSION=\"" + version + "\"\nOS=\"Y\"\n");
    }

    private record Ran(int exit, List<String> lines) {}

    private Ran run(Path script, Map<String, String> environment, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of(script.toString()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().remove("MISECUE_OPTS");
        builder.environment().put("JAVA_HOME", javaHome.toString());
        builder.environment().putAll(environment);
        Process process = builder.start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), output.lines().toList());
    }

    private String jar() {
        return temp.resolve("a place/misecue/lib/misecue.jar").toString();
    }

    @Test
    void passes_every_argument_as_it_is() throws Exception {
        Ran ran = run(launcher, Map.of(), "find", "two  spaces", "*", "", "$HOME", "it's");
        assertThat(ran.exit()).isZero();
        assertThat(ran.lines())
                .endsWith("-cp", jar(), "org.misecue.cli.Misecue", "find", "two  spaces", "*", "", "$HOME", "it's")
                .contains("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto")
                .noneMatch(line -> line.startsWith("-XX:SharedArchiveFile"));
    }

    @Test
    void finds_its_place_through_links() throws Exception {
        Path direct = Files.createSymbolicLink(temp.resolve("direct"), launcher);
        Files.createDirectory(temp.resolve("links"));
        Path relative = Files.createSymbolicLink(temp.resolve("links/relative"), Path.of("../direct"));
        assertThat(run(relative, Map.of()).lines()).endsWith("-cp", jar(), "org.misecue.cli.Misecue");
        assertThat(run(direct, Map.of()).lines()).endsWith("-cp", jar(), "org.misecue.cli.Misecue");
    }

    @Test
    void uses_the_archive_where_there_is_one_and_further_options_where_they_are_set() throws Exception {
        Path archive = temp.resolve("a place/misecue/lib/misecue.jsa");
        Files.writeString(archive, "");
        assertThat(run(launcher, Map.of("MISECUE_OPTS", "-Xmx2g -Dx=y")).lines())
                .contains("-XX:SharedArchiveFile=" + archive, "-Xmx2g", "-Dx=y");
    }

    @Test
    void takes_java_from_the_path_where_no_home_is_set() throws Exception {
        String path = javaHome.resolve("bin") + ":" + System.getenv("PATH");
        assertThat(run(launcher, Map.of("JAVA_HOME", "", "PATH", path)).lines()).contains("-cp", jar());
    }

    @Test
    void says_which_java_is_needed() throws Exception {
        release("11.0.2");
        Ran old = run(launcher, Map.of());
        assertThat(old.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(old.lines())
                .containsExactly("misecue: Java 17 or newer is needed, and " + javaHome.resolve("bin/java")
                        + " is 11.0.2; set JAVA_HOME to a newer one.");
        release("1.8.0_402");
        assertThat(run(launcher, Map.of()).exit()).isEqualTo(ExitCode.BAD_INPUT);
        release("21");
        assertThat(run(launcher, Map.of()).exit()).isZero();
    }

    /** An image: a Java of its own under lib, the jars in lib/app, and what a start without arguments does. */
    private Path image(String place) throws IOException {
        Path lib = launcher.resolveSibling("../lib").normalize();
        Path java = lib.resolve("runtime/bin/java");
        Files.createDirectories(java.getParent());
        Files.createDirectories(lib.resolve("app"));
        executable(Files.writeString(java, STAND_IN));
        Files.writeString(lib.resolve("app/arguments"), "desk --port 8000\n");
        Files.writeString(lib.resolve("app/place"), place + "\n");
        return Files.writeString(lib.resolve("app/misecue.jsa"), "");
    }

    @Test
    void takes_the_java_of_its_image_whatever_else_is_installed() throws Exception {
        release("11.0.2");
        Path archive = image(temp.resolve("a place/misecue").toString());
        Ran ran = run(launcher, Map.of(), "find", "butter");
        assertThat(ran.exit()).isZero();
        assertThat(ran.lines())
                .contains("-XX:SharedArchiveFile=" + archive)
                .endsWith("-cp", archive.resolveSibling("misecue.jar").toString(), MAIN, "find", "butter");
    }

    @Test
    void opens_what_the_image_says_when_started_without_arguments() throws Exception {
        image(temp.resolve("a place/misecue").toString());
        assertThat(run(launcher, Map.of()).lines()).endsWith(MAIN, "desk", "--port", "8000");
    }

    @Test
    void passes_over_the_archive_of_another_place_and_makes_it_anew() throws Exception {
        Path archive = image("/somewhere/else");
        Path java = archive.resolveSibling("../runtime/bin/java").normalize();
        executable(Files.writeString(
                java,
                STAND_IN
                        + "case \"$*\" in *-Xshare:dump*) for word; do case $word in"
                        + " -XX:SharedArchiveFile=*) echo new > \"${word#*=}\" ;; esac; done ;; esac\n"));
        assertThat(run(launcher, Map.of(), "read").lines()).noneMatch(line -> line.contains("SharedArchiveFile"));
        for (int i = 0; i < 500 && !(Files.exists(archive) && Files.size(archive) > 0); i++) {
            Thread.sleep(10);
        }
        assertThat(archive).hasContent("new");
        assertThat(run(launcher, Map.of(), "read").lines()).contains("-XX:SharedArchiveFile=" + archive);
    }
}
