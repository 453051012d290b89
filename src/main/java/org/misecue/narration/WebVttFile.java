package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The blocks of a WebVTT file, by the parsing rules of the standard (W3C WebVTT, section "WebVTT file parsing"): what is
 * malformed is skipped, never fatal. Settings, styles and regions say where a cue is drawn, which is nothing to us; they
 * are passed over.
 */
final class WebVttFile {

    private static final String ARROW = "-->";

    private final List<String> lines;
    private final List<RawCue> cues = new ArrayList<>();
    private final List<Integer> brokenTimes = new ArrayList<>();
    private int next;

    /**
     * A cue as the file has it.
     *
     * @param line of its times, from 1
     * @param text with its tags and line breaks
     */
    record RawCue(int line, String id, Duration start, Duration end, String text) {}

    private WebVttFile(List<String> lines) {
        this.lines = lines;
    }

    static boolean hasSignature(String text) {
        return text.startsWith("WEBVTT") && (text.length() == 6 || " \t\r\n".indexOf(text.charAt(6)) >= 0);
    }

    /** @param text without byte order mark */
    static WebVttFile parse(String text) {
        WebVttFile file = new WebVttFile(text.replace('\0', '\uFFFD').lines().toList());
        if (hasSignature(text)) {
            file.next = 1;
            file.skipHeader();
            file.readBlocks();
        }
        return file;
    }

    List<RawCue> cues() {
        return cues;
    }

    /** The lines, from 1, that should have been a cue's times but can't be read. */
    List<Integer> brokenTimes() {
        return brokenTimes;
    }

    /** The header goes on until a blank line or a line with an arrow. */
    private void skipHeader() {
        while (next < lines.size()
                && !lines.get(next).isEmpty()
                && !lines.get(next).contains(ARROW)) {
            next++;
        }
    }

    private void readBlocks() {
        while (next < lines.size()) {
            if (lines.get(next).isEmpty()) {
                next++;
            } else {
                readBlock();
            }
        }
    }

    /** A block is a cue if there is an arrow in its first line, or in its second after an id. */
    private void readBlock() {
        String id = "";
        if (!lines.get(next).contains(ARROW)) {
            id = lines.get(next++);
            if (next == lines.size() || !lines.get(next).contains(ARROW)) {
                textToEndOfBlock(); // a comment, style, region or a stray line
                return;
            }
        }
        int line = next + 1;
        WebVttTime.Span span = WebVttTime.span(lines.get(next++)).orElse(null);
        String text = textToEndOfBlock();
        if (span == null) {
            brokenTimes.add(line);
        } else {
            cues.add(new RawCue(line, id, span.start(), span.end(), text));
        }
    }

    /** A line with an arrow begins a new block even without a blank line before it. */
    private String textToEndOfBlock() {
        int from = next;
        while (next < lines.size()
                && !lines.get(next).isEmpty()
                && !lines.get(next).contains(ARROW)) {
            next++;
        }
        return String.join("\n", lines.subList(from, next));
    }
}
