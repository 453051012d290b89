package org.misecue.footage;

/** A call into FFmpeg that failed; the ways in turn it into a sentence about the file. */
final class FilmFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    FilmFault(String what, int code) {
        super(what + " failed with FFmpeg's code " + code);
    }
}
