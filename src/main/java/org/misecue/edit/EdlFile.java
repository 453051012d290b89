package org.misecue.edit;

import java.text.Normalizer;
import java.util.Locale;
import org.misecue.footage.Timecode;

/**
 * A film with its markers as a CMX 3600 list: one event over its whole length, and a {@code * LOC:} line for each marker.
 * The list knows ASCII only, and no frame rate but that it drops numbers or not.
 */
public final class EdlFile {

    private static final int COMMENT = 120;

    private EdlFile() {}

    /** Out points are the first frame behind. */
    public static String of(MarkedFilm film) {
        Timecode start = film.starts();
        Timecode end = start.plus(film.rate().startOf(film.frames()));
        StringBuilder out = new StringBuilder();
        out.append("TITLE: ").append(ascii(film.title())).append('\n');
        out.append("FCM: ")
                .append(start.dropFrame() ? "DROP FRAME" : "NON-DROP FRAME")
                .append("\n\n");
        out.append("001  AX       V     C        %s %s %s %s\n".formatted(start, end, start, end));
        out.append("* FROM CLIP NAME: ").append(ascii(film.name())).append('\n');
        for (Marker marker : film.markers()) {
            String text = ascii(marker.kind().word().toUpperCase(Locale.ROOT) + " " + marker.name()
                    + (marker.comment().isEmpty() ? "" : " - " + marker.comment()));
            out.append("* LOC: %s %-7s %s\n"
                    .formatted(
                            film.timecode(marker),
                            marker.kind().colour(),
                            text.length() > COMMENT ? text.substring(0, COMMENT) : text));
        }
        return out.toString();
    }

    /** "½ tsp crème" becomes "1/2 tsp creme". */
    private static String ascii(String text) {
        String spelled =
                text.replace("–", "-").replace("—", "-").replace("°", " deg ").replace('’', '\'');
        return Normalizer.normalize(spelled, Normalizer.Form.NFKD)
                .replace('⁄', '/')
                .replaceAll("\\p{M}", "")
                .replaceAll("[^ -~]", "?")
                .replaceAll(" {2,}", " ");
    }
}
