package org.misecue.footage;

import java.nio.file.Path;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** A call into FFmpeg that failed; the ways in turn it into a sentence about the film. */
final class FilmFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    FilmFault(String what, int code) {
        super(what + " failed with FFmpeg's code " + code);
    }

    BadInput of(Path film) {
        return new BadInput(
                Place.of(film.toString()),
                "the film cannot be converted, because " + getMessage() + "; export it as H.264 with AAC sound",
                this);
    }
}
