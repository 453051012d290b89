package org.misecue.shown;

import java.nio.file.Path;
import java.time.Duration;
import org.misecue.footage.Grey;
import org.misecue.footage.Screening;

/** The plain way, to compare with: one frame of each second is read whole, with the same preparation of lines. */
public final class SecondBySecond {

    private SecondBySecond() {}

    /** How many lines were read. */
    public static int read(Path film, LanguageData data) {
        int lines = 0;
        try (Screening screening = Screening.open(film, Duration.ofSeconds(1), 640);
                Recogniser recogniser = Recogniser.open(data)) {
            Eye eye = new TextEye(recogniser);
            while (screening.next()) {
                Grey small = screening.small();
                Grey whole = screening.whole();
                StandingEdges edges = new StandingEdges(small.width(), small.height());
                for (int i = 0; i <= 2; i++) {
                    edges.see(small);
                }
                Box all = new Box(0, 0, small.width(), small.height());
                Patch patch = new Patch(edges, all, new Box(0, 0, whole.width(), whole.height()), 0);
                patch.take(whole, edges.now());
                patch.read(eye, (double) whole.width() / small.width(), edges.now());
                lines += patch.lines().size();
            }
        }
        return lines;
    }
}
