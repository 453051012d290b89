package org.misecue.edit;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Captions as files: WebVTT by its standard (W3C), and SubRip as players read it. */
public final class CaptionFile {

    private CaptionFile() {}

    /** Starts with {@code WEBVTT}; a speaker is a voice span. */
    public static String webVtt(List<Caption> captions) {
        StringBuilder out = new StringBuilder("WEBVTT\n");
        int number = 1;
        for (Caption one : captions) {
            out.append('\n').append(number++).append('\n');
            out.append(time(one.start(), '.'))
                    .append(" --> ")
                    .append(time(one.end(), '.'))
                    .append('\n');
            one.speaker().map(CaptionFile::voice).ifPresent(out::append);
            one.lines().forEach(line -> out.append(escaped(line)).append('\n'));
        }
        return out.toString();
    }

    /** Numbered from 1, with a comma before the milliseconds. A speaker stands before the first line. */
    public static String subRip(List<Caption> captions) {
        StringBuilder out = new StringBuilder();
        Optional<String> last = Optional.empty();
        int number = 1;
        for (Caption one : captions) {
            out.append(number++).append('\n');
            out.append(time(one.start(), ','))
                    .append(" --> ")
                    .append(time(one.end(), ','))
                    .append('\n');
            if (!one.speaker().equals(last)) {
                one.speaker().ifPresent(name -> out.append(plain(name)).append(": "));
                last = one.speaker();
            }
            one.lines().forEach(line -> out.append(plain(line)).append('\n'));
            out.append('\n');
        }
        return out.toString();
    }

    private static String voice(String speaker) {
        return "<v " + escaped(speaker.replaceAll("\\s+", " ")).replace(">", "") + ">";
    }

    /** In WebVTT text these three signs have a meaning; an arrow would end the cue. */
    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** SubRip knows no escapes: what players would take for tags or for times is written otherwise. */
    private static String plain(String text) {
        return text.replace('<', '‹').replace('>', '›');
    }

    private static String time(Duration at, char point) {
        return "%02d:%02d:%02d%c%03d"
                .formatted(at.toHours(), at.toMinutesPart(), at.toSecondsPart(), point, at.toMillisPart());
    }
}
