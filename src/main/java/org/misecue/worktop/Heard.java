package org.misecue.worktop;

import java.nio.file.Path;
import java.util.List;
import org.misecue.episode.Correction;
import org.misecue.episode.Episode;
import org.misecue.narration.Mender;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.notice.BadInput;

/** Narrations with what somebody corrected by ear. */
final class Heard {

    private Heard() {}

    /** @throws BadInput if the file cannot be read */
    static Narration narration(Episode episode, Path file, List<Correction> corrections) {
        String source = episode.name(file);
        return Mender.mended(
                NarrationReader.read(file, source),
                corrections.stream()
                        .filter(one -> one.narration().equals(source))
                        .map(Correction::mend)
                        .toList());
    }
}
