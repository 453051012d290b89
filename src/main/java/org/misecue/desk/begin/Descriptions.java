package org.misecue.desk.begin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;
import org.misecue.narration.Clock;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/** What films and narrations hold, in a few words; looked up once for each file as it is. */
final class Descriptions {

    private static final int MOST_KEPT = 500;

    /** A file as it was. */
    private record As(Path file, long bytes, FileTime time) {}

    /**
     * @param words "8:01, 640 × 360"; empty where it cannot be read
     * @param notes what is to be known, or why it cannot be read
     */
    record Description(String words, List<String> notes, boolean readable) {}

    private final Map<As, Description> known = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<As, Description> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** @param name as people know it: narration/main.vtt */
    Description narration(Path file, String name) {
        return of(file, name, () -> {
            Narration narration = NarrationReader.read(file, name);
            Duration end = narration.cues().stream()
                    .map(org.misecue.narration.Cue::end)
                    .max(Duration::compareTo)
                    .orElse(Duration.ZERO);
            List<String> notes = narration.notes().stream().map(Note::toString).toList();
            int cues = narration.cues().size();
            return new Description(cues + (cues == 1 ? " cue" : " cues") + ", to " + Clock.hms(end), notes, true);
        });
    }

    Description film(Path file, String name) {
        return of(file, name, () -> {
            FilmInfo film = Footage.probe(file);
            List<String> words = new ArrayList<>(List.of(Clock.hms(film.length())));
            film.picture().ifPresent(picture -> words.add(picture.width() + " × " + picture.height()));
            if (film.sound().isEmpty()) {
                words.add("no sound");
            }
            return new Description(String.join(", ", words), List.of(), true);
        });
    }

    private synchronized Description of(Path file, String name, Supplier<Description> look) {
        try {
            As now = new As(file, Files.size(file), Files.getLastModifiedTime(file));
            Description found = known.get(now);
            if (found == null) {
                found = looked(file, name, look);
                known.put(now, found);
            }
            return found;
        } catch (IOException e) {
            return new Description("", List.of(name + ": this is gone, or may not be read."), false);
        }
    }

    private static Description looked(Path file, String name, Supplier<Description> look) {
        try {
            return look.get();
        } catch (BadInput e) {
            String sentence = String.valueOf(e.getMessage()).replace(file.toString(), name);
            return new Description("", List.of(sentence), false);
        }
    }
}
