package org.misecue.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.misecue.shown.LanguageData;

/**
 * Where a command stands and speaks; a test passes its own.
 *
 * @param out for results
 * @param err for notes, progress and what went wrong
 * @param folder that relative names start from
 * @param terminal whether a person is watching {@code err}, so that progress is worth showing
 * @param home where the person keeps what holds for every episode; empty where nobody is at home
 * @param language finds what text in pictures is read with; empty where there is none
 */
public record Stage(
        PrintStream out,
        PrintStream err,
        Path folder,
        boolean terminal,
        Optional<Path> home,
        Supplier<Optional<LanguageData>> language) {

    /** Without a home and without reading pictures: the same wherever it runs. */
    Stage(PrintStream out, PrintStream err, Path folder, boolean terminal) {
        this(out, err, folder, terminal, Optional.empty(), Optional::empty);
    }

    /** The process's own streams, in UTF-8 whatever the machine's language. */
    static Stage ofProcess() {
        return new Stage(
                utf8(FileDescriptor.out),
                utf8(FileDescriptor.err),
                Path.of(""),
                System.console() != null,
                Optional.ofNullable(System.getProperty("user.home")).map(Path::of),
                () -> LanguageData.find(System.getenv()));
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }

    /** Whether words may be shown in bold. */
    boolean colour() {
        return terminal && System.getenv("NO_COLOR") == null;
    }

    Path resolve(Path named) {
        return folder.resolve(named);
    }
}
