package org.misecue.worktop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.misecue.episode.Correction;
import org.misecue.narration.Mender;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.narration.Shift;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/** Narrations with what somebody corrected by ear, each on its film's clock. */
record Heard(FilmClocks clocks, List<Correction> corrections) {

    /** @throws BadInput if the file cannot be read */
    Narration narration(Path file) {
        String source = clocks.episode().name(file);
        return ofFilm(NarrationReader.read(file, source));
    }

    /** Corrections are kept on the file's own clock, so that a new offset leaves them right. */
    Narration ofFilm(Narration narration) {
        Narration mended = Mender.mended(
                narration,
                corrections.stream()
                        .filter(one -> one.narration().equals(narration.source()))
                        .map(Correction::mend)
                        .toList());
        return Shift.by(mended, clocks.offsetOf(narration.source()));
    }

    /** Those of one film behind each other in the order of its time, with notes where they do not fit together. */
    List<Narration> joined(List<Narration> narrations) {
        Map<String, List<Narration>> byClock = new LinkedHashMap<>();
        narrations.forEach(one -> byClock.computeIfAbsent(clocks.clockOf(one.source()), clock -> new ArrayList<>())
                .add(one));
        return byClock.values().stream()
                .flatMap(ofOneClock -> inTime(ofOneClock).stream())
                .toList();
    }

    private static List<Narration> inTime(List<Narration> ofOneClock) {
        List<Narration> inTime = ofOneClock.stream()
                .sorted(Comparator.comparing(Narration::start))
                .toList();
        List<Narration> told = new ArrayList<>();
        for (int i = 0; i < inTime.size(); i++) {
            Narration next = inTime.get(i);
            List<Narration> before = inTime.subList(0, i);
            List<Note> notes = new ArrayList<>();
            before.forEach(one -> Joints.overlap(one, next).ifPresent(notes::add));
            before.stream()
                    .filter(one -> !one.cues().isEmpty())
                    .max(Comparator.comparing(Narration::end))
                    .flatMap(last -> Joints.silence(last, next))
                    .ifPresent(notes::add);
            told.add(notes.stream().reduce(next, Narration::with, (one, other) -> other));
        }
        return told;
    }
}
