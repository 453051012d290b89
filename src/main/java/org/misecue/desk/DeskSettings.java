package org.misecue.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.misecue.shown.LanguageData;

/**
 * How a desk is opened.
 *
 * @param folder an episode, an archive of episodes, or one where nothing is yet; absolute
 * @param port 0 for any that is free
 * @param lan whether devices of the local network may ask to come in
 * @param code shows the owner each code by which a guest can
 * @param home where the person keeps what holds for every episode
 * @param language finds what text in pictures is read with
 * @param clock on the wall of the kitchen
 */
public record DeskSettings(
        Path folder,
        int port,
        boolean lan,
        Consumer<String> code,
        Optional<Path> home,
        Supplier<Optional<LanguageData>> language,
        Clock clock) {

    /** By the clock of this machine. */
    public DeskSettings(
            Path folder,
            int port,
            boolean lan,
            Consumer<String> code,
            Optional<Path> home,
            Supplier<Optional<LanguageData>> language) {
        this(folder, port, lan, code, home, language, Clock.systemDefaultZone());
    }

    /** By another clock. */
    public DeskSettings withClock(Clock other) {
        return new DeskSettings(folder, port, lan, code, home, language, other);
    }
}
