package org.misecue.narration;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * Reads a narration file of any of these formats: WebVTT, SubRip, TTML, recogniser JSON (see {@link RecogniserJson} for its
 * shape) and text with times in brackets ({@link StampedText}). What the file holds decides, not its name; the name is
 * asked only where the content shows nothing.
 *
 * <p>Text is UTF-8, UTF-16 with a byte order mark, or else Windows-1252 (with a note).
 */
public final class NarrationReader {

    /** In the order in which they are asked whether a text is theirs. */
    private static final List<CueFormat> FORMATS =
            List.of(new WebVttReader(), new TtmlReader(), new RecogniserJson(), new StampedText(), new SubRipReader());

    private NarrationReader() {}

    /**
     * @param file at most 20 MB
     * @param source how the file is called in results and messages, such as {@code narration/main.vtt}
     * @throws BadInput where the file can't be read, is no text, is of no known format or holds no readable cue
     */
    public static Narration read(Path file, String source) {
        return read(NarrationText.of(file, source), source);
    }

    /** Whether a file that begins like this shows by itself that it is a narration. */
    public static boolean recognises(byte[] head) {
        try {
            String text = NarrationText.of(head, "").text();
            return FORMATS.stream().anyMatch(format -> format.recognises(text));
        } catch (BadInput e) {
            return false;
        }
    }

    static Narration read(byte[] bytes, String source) {
        return read(NarrationText.of(bytes, source), source);
    }

    private static Narration read(NarrationText text, String source) {
        CueFormat format = formatOf(text.text(), source)
                .orElseThrow(() -> new BadInput(
                        Place.of(source),
                        "expected WebVTT, SubRip, TTML, recogniser JSON or lines that begin with a time such as [1:05], but"
                                + " there is none of these; put the time in brackets before each line of text"));
        CueSheet sheet = new CueSheet(source);
        text.notes().forEach(sheet::note);
        format.read(text.text(), sheet);
        return sheet.narration(format);
    }

    private static Optional<CueFormat> formatOf(String text, String source) {
        String name = source.toLowerCase(Locale.ROOT);
        return FORMATS.stream()
                .filter(format -> format.recognises(text))
                .findFirst()
                .or(() -> FORMATS.stream()
                        .filter(format -> format.extensions().stream().anyMatch(name::endsWith))
                        .findFirst());
    }
}
