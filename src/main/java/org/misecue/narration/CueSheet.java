package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Collects the cues of one file as they are read, then puts them in order and gives every cue an end. */
final class CueSheet {

    /** How fast people speak where nothing else is known: 150 words a minute. */
    static final Duration PER_WORD = Duration.ofMillis(400);

    /** The least that a cue without a known end lasts. */
    static final Duration LEAST = Duration.ofSeconds(2);

    /** After so many notes the rest is only counted. */
    private static final int MOST_NOTES = 20;

    private final String source;
    private List<Draft> drafts = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private int uncounted;

    CueSheet(String source) {
        this.source = source;
    }

    /**
     * A cue as its file has it.
     *
     * @param line where it stands in the file, from 1
     * @param end where the file has one; it may lie before the start
     */
    record Draft(int line, Duration start, Optional<Duration> end, Optional<String> speaker, List<SpokenWord> words) {

        Draft withWords(List<SpokenWord> others) {
            return new Draft(line, start, end, speaker, others);
        }
    }

    /** A cue without words is nothing to find or compare, and is dropped. */
    void add(Draft draft) {
        if (draft.start().compareTo(Clock.LONGEST) > 0) {
            note(draft.line(), "the cue begins after more than 100,000 hours and was left out; correct its time");
        } else if (!draft.words().isEmpty()) {
            drafts.add(draft);
        }
    }

    void note(int line, String sentence) {
        note(new Note(Place.of(source, line), sentence));
    }

    void note(Note note) {
        if (notes.size() < MOST_NOTES) {
            notes.add(note);
        } else {
            uncounted++;
        }
    }

    BadInput badInput(int line, int column, String sentence) {
        return new BadInput(new Place(source, line, column), sentence);
    }

    /** @throws BadInput where no cue could be read */
    Narration narration(CueFormat format) {
        if (drafts.isEmpty()) {
            throw new BadInput(
                    notes.isEmpty() ? Place.of(source) : notes.get(0).place(),
                    "no cue with words can be read as " + format.name() + "; expected one such as " + format.example());
        }
        putInOrder();
        if (RollUp.isIn(drafts)) {
            note(new Note(Place.of(source), "the captions roll up, each line shown twice; it was read once"));
            drafts = RollUp.undone(drafts);
        }
        List<Cue> cues = new ArrayList<>();
        Optional<Duration> next = Optional.empty(); // when a later cue begins
        for (int i = drafts.size() - 1; i >= 0; i--) {
            cues.add(finished(drafts.get(i), next));
            if (i > 0 && drafts.get(i - 1).start().compareTo(drafts.get(i).start()) < 0) {
                next = Optional.of(drafts.get(i).start());
            }
        }
        Collections.reverse(cues);
        notes.sort(Comparator.comparingInt(note -> note.place().line()));
        if (uncounted > 0) {
            notes.add(new Note(Place.of(source), "and " + uncounted + " more of the same kind"));
        }
        return new Narration(source, List.copyOf(cues), List.copyOf(notes));
    }

    private void putInOrder() {
        for (int i = 1; i < drafts.size(); i++) {
            if (drafts.get(i).start().compareTo(drafts.get(i - 1).start()) < 0) {
                note(drafts.get(i).line(), "the cue begins before the one above it; cues were put in order of time");
                drafts.sort(Comparator.comparing(Draft::start));
                return;
            }
        }
    }

    private Cue finished(Draft draft, Optional<Duration> next) {
        Duration end = end(draft, next);
        String text =
                String.join(" ", draft.words().stream().map(SpokenWord::text).toList());
        return new Cue(draft.start(), end, draft.speaker(), text, SpokenWord.timed(draft.words(), draft.start(), end));
    }

    /** The end in the file; without one, where the next cue begins; for the last, as long as the words take to say. */
    private Duration end(Draft draft, Optional<Duration> next) {
        Duration spoken =
                draft.start().plus(longer(PER_WORD.multipliedBy(draft.words().size()), LEAST));
        if (draft.end().isEmpty()) {
            return next.orElse(spoken);
        }
        Duration end = draft.end().get();
        if (end.compareTo(draft.start()) > 0 && end.compareTo(Clock.LONGEST) <= 0) {
            return end;
        }
        note(draft.line(), "the cue ends before it begins; its end was taken from the length of its text");
        return next.filter(begins -> begins.compareTo(spoken) < 0).orElse(spoken);
    }

    private static Duration longer(Duration a, Duration b) {
        return a.compareTo(b) > 0 ? a : b;
    }
}
