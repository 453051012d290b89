package org.misecue.narration;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** The text of a narration file, whatever it was encoded in, without a byte order mark. */
record NarrationText(String text, List<Note> notes) {

    /** A whole day of speech with a time for each word is about half of this. */
    static final int LARGEST_BYTES = 20 * 1024 * 1024;

    /** More control characters than one in this many, and the file is no text. */
    private static final int CONTROLS_ONE_IN = 100;

    private static final String WHAT_WE_READ =
            "expected text: WebVTT, SubRip, TTML, recogniser JSON or lines that begin with a time such as [1:05]";

    static NarrationText of(Path file, String source) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new BadInput(Place.of(source), "there is no such file; check its name");
            }
            if (Files.size(file) > LARGEST_BYTES) {
                throw new BadInput(
                        Place.of(source),
                        "expected a narration of at most 20 MB, but this file is larger; cut it into several files");
            }
            return of(Files.readAllBytes(file), source);
        } catch (IOException e) {
            throw new BadInput(Place.of(source), "the file cannot be read; check its permissions", e);
        }
    }

    static NarrationText of(byte[] bytes, String source) {
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return checked(decode(bytes, 2, StandardCharsets.UTF_16LE), List.of(), source);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return checked(decode(bytes, 2, StandardCharsets.UTF_16BE), List.of(), source);
        }
        int from = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                    .toString();
            return checked(text, List.of(), source);
        } catch (CharacterCodingException e) {
            Note note = new Note(
                    Place.of(source),
                    "the file is not UTF-8 and was read as Windows-1252; save it as UTF-8 to be sure");
            return checked(decode(bytes, from, Charset.forName("windows-1252")), List.of(note), source);
        }
    }

    private static NarrationText checked(String text, List<Note> notes, String source) {
        boolean mayHoldNulls = WebVttFile.hasSignature(text); // the standard replaces them
        long controls = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == 0 && !mayHoldNulls) {
                throw new BadInput(Place.of(source), WHAT_WE_READ + ", but this is a binary file");
            }
            controls += Character.isISOControl(c) && !Character.isWhitespace(c) ? 1 : 0;
        }
        if (!mayHoldNulls && controls * CONTROLS_ONE_IN > text.length()) {
            throw new BadInput(Place.of(source), WHAT_WE_READ + ", but this is a binary file");
        }
        return new NarrationText(text, notes);
    }

    private static String decode(byte[] bytes, int from, Charset charset) {
        return new String(bytes, from, bytes.length - from, charset);
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        if (bytes.length < head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }
}
