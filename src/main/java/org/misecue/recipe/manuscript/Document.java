package org.misecue.recipe.manuscript;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** A file's bytes with the name that people know it by. */
record Document(String name, String type, byte[] bytes) {

    /** A recipe has some thousand. */
    static final int MOST_CHARACTERS = 1_000_000;

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    BadInput refuse(String sentence) {
        return new BadInput(Place.of(name), sentence);
    }

    BadInput refuse(String sentence, Throwable cause) {
        return new BadInput(Place.of(name), sentence, cause);
    }

    BadInput locked(Throwable cause) {
        return refuse("the document is locked with a password; save a copy without one.", cause);
    }

    BadInput damaged(Throwable cause) {
        return refuse(
                "the document is damaged or not what its name says; save it again, or paste the recipe into a text file.",
                cause);
    }

    BadInput tooLong() {
        return refuse("there is far more text in it than a recipe has; keep only the recipe in this file.");
    }

    /**
     * The bytes as the text of a recipe, every letter of it.
     *
     * @throws BadInput if there is more than a recipe has
     */
    String recipeText() {
        if (bytes.length > 2 * MOST_CHARACTERS) {
            throw tooLong();
        }
        return text();
    }

    /** The bytes as text: UTF-8, UTF-16 with its mark, else Windows western. */
    String text() {
        if (startsWith(0xFF, 0xFE) || startsWith(0xFE, 0xFF)) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            return new String(bytes, WINDOWS);
        }
    }

    /** Whether the bytes hold what no text holds: NUL and other control characters. */
    boolean binary() {
        if (startsWith(0xFF, 0xFE) || startsWith(0xFE, 0xFF)) {
            return false;
        }
        for (byte each : bytes) {
            if (each >= 0
                    && each < 0x20
                    && each != '\n'
                    && each != '\r'
                    && each != '\t'
                    && each != '\f'
                    && each != 0x0B) {
                return true;
            }
        }
        return false;
    }

    private boolean startsWith(int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }
}
