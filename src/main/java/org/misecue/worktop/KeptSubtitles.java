package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.misecue.episode.OutFolder;
import org.misecue.footage.FilmSubtitles;
import org.misecue.footage.SubtitlesJson;
import org.misecue.notice.BadInput;
import org.misecue.shown.ShownJson;

/** The subtitles inside a film, kept in {@code .misecue/said/} for as long as the film is the same. */
final class KeptSubtitles {

    private final OutFolder state;
    private final Path film;
    private final String file;

    /** @param name of the film relative to the episode */
    KeptSubtitles(OutFolder state, Path film, String name) {
        this.state = state;
        this.film = film;
        this.file = "said/" + name.substring(name.lastIndexOf('/') + 1) + ".json";
    }

    /** @throws BadInput if the film cannot be read */
    FilmSubtitles read(Locale language) {
        String mark = language.getLanguage() + " " + ShownJson.mark(film);
        return kept(mark).orElseGet(() -> {
            FilmSubtitles read = FilmSubtitles.of(film, language);
            if (read.read().isPresent()) {
                keep(SubtitlesJson.write(read, mark)); // only to find a track takes no time
            }
            return read;
        });
    }

    private Optional<FilmSubtitles> kept(String mark) {
        Path kept = state.path(file);
        try {
            return Files.isRegularFile(kept)
                    ? SubtitlesJson.read(new String(Files.readAllBytes(kept), UTF_8), mark)
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // it can be made again
        }
    }

    private void keep(String text) {
        try {
            state.write(file, text);
        } catch (BadInput | UncheckedIOException e) {
            // Where nothing can be kept, the film is read again the next time.
        }
    }
}
