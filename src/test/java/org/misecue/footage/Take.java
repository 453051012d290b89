package org.misecue.footage;

import java.nio.ShortBuffer;
import java.nio.file.Path;
import java.util.Optional;

/** What happens before the cameras: each films the same from its own moment on, and its frames show their numbers. */
public final class Take {

    private static final FrameRate PAL = new FrameRate(25, 1);

    private final float[] sound;

    /** With talk that is drawn from a seed. */
    public Take(long seed, double seconds) {
        this(Babble.talk(seed, seconds));
    }

    private Take(float[] sound) {
        this.sound = sound;
    }

    /** Nobody makes a sound. */
    public static Take silent(double seconds) {
        return new Take(new float[(int) (seconds * Babble.RATE)]);
    }

    /** A film without a sound track. */
    public static Path mute(Path file, int frames, String timecode) {
        return TestFilm.write(
                file,
                frames,
                PAL,
                Optional.empty(),
                number -> 40_000L * number,
                recorder -> recorder.setVideoMetadata("timecode", timecode));
    }

    /** Films from a moment on, in MP4 or QuickTime as the file's name ends, with 25 frames a second. */
    public Path film(Path file, double from, int frames) {
        return film(file, from, frames, "");
    }

    /** @param timecode of the first frame; nothing where it is empty */
    public Path film(Path file, double from, int frames, String timecode) {
        return film(file, from, frames, timecode, 0);
    }

    /** @param late by how many thousandths of a second the picture, and the film's clock, begin after the sound */
    Path film(Path file, double from, int frames, String timecode, int late) {
        return TestFilm.write(
                file,
                frames,
                PAL,
                Optional.of(heard(from, frames / 25.0)),
                number -> 1000L * late + 40_000L * number,
                recorder -> {
                    recorder.setFormat(file.toString().endsWith(".mov") ? "mov" : "mp4");
                    if (!timecode.isEmpty()) {
                        recorder.setVideoMetadata("timecode", timecode);
                    }
                });
    }

    /** Records the sound alone. */
    Path recording(Path file, double from, double seconds) {
        return TestFilm.write(file, 0, PAL, Optional.of(heard(from, seconds)), number -> 0, recorder -> {});
    }

    private ShortBuffer heard(double from, double seconds) {
        ShortBuffer heard = ShortBuffer.allocate((int) Math.round(seconds * TestFilm.SAMPLES));
        int step = Babble.RATE / TestFilm.SAMPLES;
        for (int i = 0; i < heard.capacity(); i++) {
            int at = (int) Math.round(from * Babble.RATE) + step * i;
            heard.put(i, (short) (16_000 * (sound[at] + sound[at + 1]) / 2));
        }
        return heard;
    }
}
