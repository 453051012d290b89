package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.misecue.notice.BadInput;

/** The seeds are small films, whole, cut short and with bytes changed. */
class FilmFuzzTest {

    @FuzzTest
    void a_damaged_film_is_read_or_refused_in_a_sentence(byte[] bytes) throws IOException {
        Path folder = Files.createTempDirectory("film");
        Path film = Files.write(folder.resolve("film.mp4"), bytes);
        Path still = folder.resolve("still.png");
        Path clip = folder.resolve("clip.mp4");
        try {
            Still.at(film, Duration.ZERO, still);
            assertThat(Footage.probe(film).picture()).isPresent();
            Clip.cut(film, Duration.ZERO, Duration.ofMillis(50), clip);
        } catch (BadInput e) {
            assertThat(e.getMessage()).startsWith(film + ": ").doesNotContain("\n");
        } finally {
            Files.deleteIfExists(still);
            Files.deleteIfExists(clip);
            Files.delete(film);
            // Fails where something half-finished was left behind.
            Files.delete(folder);
        }
    }
}
