package org.misecue.narration;

import java.util.ArrayList;
import java.util.List;

/**
 * Captions that roll up show each line twice: new below, then again above the next. Read as they stand, everything would
 * have been said twice.
 */
final class RollUp {

    /** So many words may well be said twice in a row by chance. */
    private static final int LEAST_WORDS = 3;

    /** A file rolls up if more than one in so many cues begins as the one before it ends. */
    private static final int ONE_IN = 2;

    /** Fewer cues show no habit. */
    private static final int LEAST_CUES = 4;

    /** No caption shows more of what was there before. */
    private static final int MOST_WORDS = 60;

    private RollUp() {}

    static boolean isIn(List<CueSheet.Draft> drafts) {
        int repeats = 0;
        for (int i = 1; i < drafts.size(); i++) {
            repeats += repeated(drafts.get(i - 1), drafts.get(i)) >= LEAST_WORDS ? 1 : 0;
        }
        return drafts.size() >= LEAST_CUES && repeats * ONE_IN > drafts.size() - 1;
    }

    /** The cues without the words that the one before has shown; those that show nothing new are gone. */
    static List<CueSheet.Draft> undone(List<CueSheet.Draft> drafts) {
        List<CueSheet.Draft> fresh = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            CueSheet.Draft draft = drafts.get(i);
            int shown = i == 0 ? 0 : repeated(drafts.get(i - 1), draft);
            if (shown < draft.words().size()) {
                fresh.add(draft.withWords(
                        draft.words().subList(shown, draft.words().size())));
            }
        }
        return fresh;
    }

    /** How many words end the one cue and begin the next. */
    private static int repeated(CueSheet.Draft before, CueSheet.Draft after) {
        int most = Math.min(
                MOST_WORDS, Math.min(before.words().size(), after.words().size()));
        int words = most;
        while (words > 0 && !repeats(before.words(), after.words(), words)) {
            words--;
        }
        return words;
    }

    private static boolean repeats(List<SpokenWord> before, List<SpokenWord> after, int words) {
        for (int i = 0; i < words; i++) {
            if (!before.get(before.size() - words + i)
                    .text()
                    .equals(after.get(i).text())) {
                return false;
            }
        }
        return true;
    }
}
