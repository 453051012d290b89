package org.misecue.desk.begin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.misecue.episode.FileKind;

/** How much a disk still takes. */
interface Room {

    /** Stays free beside films: what is made of them needs a place too. */
    long RESERVE = 1L << 30;

    long SMALL_FILE = 20L << 20;

    Room ON_DISK = folder -> Files.getFileStore(folder).getUsableSpace();

    /** Bytes that are free where this folder lies. */
    long free(Path folder) throws IOException;

    /** The largest file of a kind that may go into a folder. The readers of recipes and narrations take no more either. */
    default long most(FileKind kind, Path folder) {
        return kind == FileKind.FILM ? forFilms(folder) : SMALL_FILE;
    }

    private long forFilms(Path folder) {
        try {
            return Math.max(0, free(folder) - RESERVE);
        } catch (IOException e) {
            return 0;
        }
    }
}
