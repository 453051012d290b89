package org.misecue.footage;

/** One stream of a film. */
public sealed interface Track {

    /** The codec's short name, such as {@code h264}. */
    String codec();

    /**
     * A picture track.
     *
     * @param width in pixels, as shown upright
     * @param height in pixels, as shown upright
     * @param rate exact; the mean where it varies
     * @param variableRate whether frames last differently long, as telephones record
     */
    record Picture(String codec, int width, int height, FrameRate rate, boolean variableRate) implements Track {}

    /** A sound track; the rate in samples per second. */
    record Sound(String codec, int sampleRate, int channels) implements Track {}

    /** Subtitles, time code, attachments; {@code kind} is FFmpeg's word for it: subtitle, data, attachment. */
    record Other(String codec, String kind) implements Track {}
}
