package org.misecue.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.misecue.episode.Episode;
import org.misecue.notice.BadInput;
import org.misecue.worktop.Version;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said when a command cannot do its work: one sentence, never a stack trace unless it is asked for. */
final class Faults {

    private final Stage stage;

    Faults(Stage stage) {
        this.stage = stage;
    }

    int wrongUsage(ParameterException e, String[] args) {
        PrintStream err = stage.err();
        CommandLine command = e.getCommandLine();
        err.println("misecue: " + e.getMessage());
        if (e instanceof UnmatchedArgumentException unmatched) {
            List<String> near = unmatched.getSuggestions();
            if (!near.isEmpty()) {
                err.println("Did you mean " + String.join(" or ", near) + "?");
            }
        }
        err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }

    int failed(Exception e, CommandLine line, ParseResult parsed) {
        if (e instanceof BadInput) {
            stage.err().println("misecue: " + ended(String.valueOf(e.getMessage())));
            return ExitCode.BAD_INPUT;
        }
        return ours(e, line);
    }

    /** With a full stop, as a sentence has. */
    static String ended(String sentence) {
        return sentence.matches("(?s).*[.!?]") ? sentence : sentence + ".";
    }

    int ours(Throwable e, CommandLine line) {
        Object command = line.getCommand();
        PrintStream err = stage.err();
        String what = e instanceof OutOfMemoryError ? "it ran out of memory" : "it met something it was not made for";
        if (command instanceof MisecueCommand on && on.common.trace) {
            err.println("misecue: " + what + "; this is a fault of misecue, not of your files. Details:");
            err.println(details(e));
        } else {
            err.println("misecue: " + what + "; this is a fault of misecue, not of your files. Details: "
                    + whereabouts(e, command));
        }
        return ExitCode.OUR_FAULT;
    }

    private String whereabouts(Throwable e, Object command) {
        if (command instanceof MisecueCommand on && on.opened().isPresent()) {
            Episode episode = on.opened().get();
            try {
                Path file = episode.state().write("fault.txt", details(e));
                return file.toString();
            } catch (BadInput unwritable) {
                // then the person is told how to see them
            }
        }
        return "run it again with --trace.";
    }

    private static String details(Throwable e) {
        StringWriter text = new StringWriter();
        text.append("misecue ").append(Version.current()).append(", Java ").append(System.getProperty("java.version"));
        text.append(", ").append(System.getProperty("os.name")).append('\n');
        e.printStackTrace(new PrintWriter(text, true));
        return text.toString();
    }
}
