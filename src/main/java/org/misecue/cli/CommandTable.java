package org.misecue.cli;

import java.io.PrintWriter;
import java.util.List;
import org.misecue.worktop.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands by name. Only the one that is asked for is set up, unless all are to be listed. */
@Command(
        name = "misecue",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description = "Keeps a filmed bake and its written recipe in step.",
        footer = {"", "misecue COMMAND --help tells more about one command."})
final class CommandTable implements Runnable {

    private static final List<String> NAMES = List.of(
            "new",
            "read",
            "prep",
            "shots",
            "day",
            "index",
            "find",
            "compare",
            "decide",
            "describe",
            "captions",
            "markers",
            "log",
            "footage",
            "desk",
            "make");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "no command is named; say for example: misecue make my-episode");
    }

    static int run(String[] args, Stage stage) {
        CommandLine line = new CommandLine(new CommandTable(), new Maker());
        String asked = args.length == 0 ? "" : args[0];
        List<String> needed = NAMES.contains(asked) ? List.of(asked) : NAMES;
        needed.forEach(name -> line.addSubcommand(name, new CommandLine(command(name, stage), new Maker())));
        line.getCommandSpec().version("misecue " + Version.current());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        Faults faults = new Faults(stage);
        line.setOut(new PrintWriter(stage.out(), true));
        line.setErr(new PrintWriter(stage.err(), true));
        line.setParameterExceptionHandler(faults::wrongUsage);
        line.setExecutionExceptionHandler(faults::failed);
        line.setUsageHelpAutoWidth(false);
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError | LinkageError e) {
            return faults.ours(e, line);
        } finally {
            stage.out().flush();
            stage.err().flush();
        }
    }

    private static Object command(String name, Stage stage) {
        return switch (name) {
            case "new" -> new NewCommand(stage);
            case "read" -> new ReadCommand(stage);
            case "prep" -> new PrepCommand(stage);
            case "shots" -> new ShotsCommand(stage);
            case "day" -> new DayCommand(stage);
            case "index" -> new IndexCommand(stage);
            case "find" -> new FindCommand(stage);
            case "compare" -> new CompareCommand(stage);
            case "decide" -> new DecideCommand(stage);
            case "describe" -> new DescribeCommand(stage);
            case "captions" -> new CaptionsCommand(stage);
            case "markers" -> new MarkersCommand(stage);
            case "log" -> new LogCommand(stage);
            case "footage" -> new FootageCommand(stage);
            case "desk" -> new DeskCommand(stage);
            case "make" -> new MakeCommand(stage);
            default -> throw new IllegalArgumentException("there is no command " + name);
        };
    }
}
