package org.misecue.footage;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.regex.Pattern;
import org.bytedeco.ffmpeg.global.avcodec;

/**
 * The text in a packet of a subtitle track, by the way in which its codec puts it there: 3GPP timed text (TS 26.245: a length,
 * then UTF-8, or UTF-16 with a byte order mark), or as Matroska stores SubRip, ASS and WebVTT; both from memory, and held
 * against FFmpeg's decoders by the tests.
 */
enum SubtitlePayload {
    TIMED_TEXT(SubtitleTrack.Markup.SUBRIP) {
        @Override
        String text(byte[] packet) {
            if (packet.length < 2) {
                return "";
            }
            int told = (packet[0] & 0xff) << 8 | packet[1] & 0xff;
            int length = Math.min(told, packet.length - 2);
            boolean wide = length >= 2 && (packet[2] & 0xff) == 0xfe && (packet[3] & 0xff) == 0xff;
            return wide ? new String(packet, 4, length - 2, UTF_16BE) : new String(packet, 2, length, UTF_8);
        }
    },
    LINES(SubtitleTrack.Markup.SUBRIP),
    CUES(SubtitleTrack.Markup.WEBVTT),
    /** An order, a layer, a style, a name, three margins and an effect stand before the text. */
    EVENTS(SubtitleTrack.Markup.SUBRIP) {
        @Override
        String text(byte[] packet) {
            String[] fields = super.text(packet).split(",", 9);
            String text = fields[fields.length - 1];
            return fields.length < 9 || DRAWING.matcher(text).find()
                    ? ""
                    : BRACES.matcher(text)
                            .replaceAll("")
                            .replaceAll("\\\\[Nn]", "\n")
                            .replace("\\h", " ");
        }
    },
    NONE(SubtitleTrack.Markup.NONE);

    private static final Pattern BRACES = Pattern.compile("\\{[^{}]*\\}");
    private static final Pattern DRAWING = Pattern.compile("\\{[^{}]*\\\\p[1-9][^{}]*\\}");

    private final SubtitleTrack.Markup markup;

    SubtitlePayload(SubtitleTrack.Markup markup) {
        this.markup = markup;
    }

    static SubtitlePayload of(int codec) {
        return switch (codec) {
            case avcodec.AV_CODEC_ID_MOV_TEXT -> TIMED_TEXT;
            case avcodec.AV_CODEC_ID_SUBRIP, avcodec.AV_CODEC_ID_SRT, avcodec.AV_CODEC_ID_TEXT -> LINES;
            case avcodec.AV_CODEC_ID_WEBVTT -> CUES;
            case avcodec.AV_CODEC_ID_ASS, avcodec.AV_CODEC_ID_SSA -> EVENTS;
            default -> NONE;
        };
    }

    SubtitleTrack.Markup markup() {
        return markup;
    }

    /** Empty where there is none. */
    String text(byte[] packet) {
        return new String(packet, UTF_8).replace("\0", "");
    }
}
