package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.worktop.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A fault of the program itself is told in a sentence; the details lie in a file or come on request. */
class FaultsTest {

    @Command(name = "stumble")
    private static final class Stumble extends EpisodeCommand {
        Stumble(Stage stage) {
            super(stage);
        }

        @Override
        public Integer call() {
            open();
            throw new IllegalStateException("the bowl is upside down");
        }
    }

    @TempDir
    Path temp;

    private OnStage.Ran run(String... args) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        Stage stage = new Stage(stream, stream, temp, false);
        int exit = new CommandLine(new Stumble(stage))
                .setExecutionExceptionHandler(new Faults(stage)::failed)
                .execute(args);
        return new OnStage.Ran(exit, "", err.toString(StandardCharsets.UTF_8).replace(temp + "/", ""));
    }

    @Test
    void the_sentence_says_where_the_details_are() {
        new OnStage(temp).withSample();
        OnStage.Ran ran = run("sample-project");
        assertThat(ran.exit()).isEqualTo(ExitCode.OUR_FAULT);
        assertThat(ran.err())
                .isEqualTo(
                        "misecue: it met something it was not made for; this is a fault of misecue, not of your files."
                                + " Details: sample-project/.misecue/fault.txt\n");
        assertThat(temp.resolve("sample-project/.misecue/fault.txt"))
                .content()
                .startsWith("misecue " + Version.current())
                .contains("the bowl is upside down");
    }

    @Test
    void the_details_come_on_request() {
        new OnStage(temp).withSample();
        OnStage.Ran ran = run("sample-project", "--trace");
        assertThat(ran.exit()).isEqualTo(ExitCode.OUR_FAULT);
        assertThat(ran.err()).contains("not of your files. Details:\n", "the bowl is upside down", "\tat ");
    }
}
