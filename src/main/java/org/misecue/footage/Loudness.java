package org.misecue.footage;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How loud a sound track is from its beginning to its end, after ITU-R BS.1770 and EBU R 128, as FFmpeg measures it. A track
 * of one channel is measured as one: played by two loudspeakers it is 3 LU louder.
 *
 * @param integrated in LUFS, above −70; empty where nothing lasts 400 ms above −70 LUFS
 * @param range in LU, from 0; empty beside an empty {@code integrated}, and for a track shorter than {@link
 *     SoundCheck#RANGED}
 * @param truePeak the highest between the samples too, in dBTP, above 0 where it would clip; empty where all is nought
 */
public record Loudness(Optional<BigDecimal> integrated, Optional<BigDecimal> range, Optional<BigDecimal> truePeak) {

    /** By how many LU it is above a target in LUFS, or below where negative. */
    public Optional<BigDecimal> above(BigDecimal target) {
        return integrated.map(loudness -> loudness.subtract(target));
    }
}
