package org.misecue.footage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a Matroska file says that it is, in the element DocType of its EBML head (RFC 8794, 11.2.4). */
final class DocType {

    private static final int HEAD = 64;
    private static final String ID = "\u0042\u0082";

    private DocType() {}

    static boolean isWebm(Path film) {
        try (InputStream in = Files.newInputStream(film)) {
            String head = new String(in.readNBytes(HEAD), StandardCharsets.ISO_8859_1);
            int id = head.indexOf(ID);
            // One byte of length stands between.
            return id >= 0 && head.startsWith("webm", id + ID.length() + 1);
        } catch (IOException e) {
            return false;
        }
    }
}
