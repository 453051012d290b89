package org.misecue.shown;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.misecue.footage.Grey;
import org.misecue.footage.Screening;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Reads the cards of a film. */
public final class Cards {

    /** A little less than five pictures of each second, so that rounded frame times do not skip one. */
    private static final Duration BETWEEN = Duration.ofMillis(190);
    /** The longer side of the pictures in which writing is looked for. */
    private static final int SMALL = 640;

    private Cards() {}

    /**
     * Looks at a film from beginning to end, once, and reads what comes to stand in the picture.
     *
     * @param name what to call the film: its name relative to the episode
     * @param progress is told from time to time how far it has come
     * @throws BadInput if the film cannot be used or has no picture
     */
    public static ShownText read(Path film, String name, LanguageData data, Consumer<Duration> progress) {
        try (Screening screening = Screening.open(film, BETWEEN, SMALL);
                Recogniser recogniser = Recogniser.open(data)) {
            return read(screening, name, new TextEye(recogniser), progress);
        } catch (UnusableData e) {
            return unread(
                    name,
                    "Tesseract cannot use the language data in " + data.folder()
                            + "; install English data for version 4 or newer");
        } catch (LinkageError e) {
            return unread(
                    name, "Tesseract's libraries for this machine are not in lib/; use a build made for this machine");
        }
    }

    private static ShownText unread(String name, String because) {
        Note note = new Note(Place.of(name), "text in the picture is not read, because " + because);
        return new ShownText(name, List.of(), 0, Duration.ZERO, List.of(note));
    }

    static ShownText read(Screening screening, String name, Eye eye, Consumer<Duration> progress) {
        // Every film has a first picture, or the screening says that it has none.
        screening.next();
        Grey small = screening.small();
        Grey whole = screening.whole();
        CardWatch watch = new CardWatch(eye, small.width(), small.height(), whole.width(), whole.height());
        do {
            watch.see(screening.at(), screening.small(), screening::whole);
            progress.accept(screening.at());
        } while (screening.next());
        Duration length = screening.length();
        List<Reading> readings = watch.finish(length);
        return new ShownText(name, CardMerger.cards(name, readings), watch.framesRead(), length, List.of());
    }
}
