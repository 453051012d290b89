package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.worktop.Version;

class MisecueTest {

    @TempDir
    Path temp;

    private OnStage.Ran run(String... args) {
        return new OnStage(temp).run(args);
    }

    @Test
    void tells_its_version() {
        assertThat(run("--version")).isEqualTo(new OnStage.Ran(0, "misecue " + Version.current() + "\n", ""));
        assertThat(run("-V").out()).isEqualTo(run("--version").out());
        assertThat(Version.current()).matches("\\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
    }

    @Test
    void lists_all_commands_and_only_those_that_work() {
        assertThat(run("--help").exit()).isZero();
        assertThat(run("--help").out())
                .contains("  new ", "  read ", "  prep ", "  shots ", "  day ", "  index ", "  find ", "  compare ")
                .contains("  describe ", "  captions ", "  markers ", "  log ", "  footage ", "  desk ", "  make ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "new",
                "read",
                "prep",
                "shots",
                "day",
                "index",
                "find",
                "compare",
                "describe",
                "captions",
                "markers",
                "log",
                "footage",
                "desk",
                "make"
            })
    void every_command_explains_itself(String command) {
        OnStage.Ran ran = run(command, "--help");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Usage: misecue " + command).contains("--quiet", "--trace");
    }

    @Test
    void wrong_usage_ends_with_two_and_says_what_to_try() {
        assertThat(run()).isEqualTo(new OnStage.Ran(2, "", """
                        misecue: no command is named; say for example: misecue make my-episode
                        Try: misecue --help
                        """));
        assertThat(run("comapre")).isEqualTo(new OnStage.Ran(2, "", """
                        misecue: Unmatched argument at index 0: 'comapre'
                        Did you mean compare or prep or make?
                        Try: misecue --help
                        """));
        assertThat(run("prep", "--jsn").err()).isEqualTo("""
                        misecue: Unknown option: '--jsn'
                        Did you mean --json?
                        Try: misecue prep --help
                        """);
        assertThat(run("find").err()).isEqualTo("""
                        misecue: Missing required parameter: 'WORDS'
                        Try: misecue find --help
                        """);
        assertThat(run("find").exit()).isEqualTo(ExitCode.BAD_INPUT);
    }
}
