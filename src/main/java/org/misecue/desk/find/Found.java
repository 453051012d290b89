package org.misecue.desk.find;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.misecue.search.FindResult;
import org.misecue.search.Hit;

/**
 * What stands under the field.
 *
 * @param words that were asked; blank before anybody asked
 * @param nearest what was found instead, where nobody says these words
 * @param caution what to mind, in a sentence
 * @param more whether only the best are shown
 */
public record Found(
        String words, List<FoundMoment> moments, Optional<String> nearest, Optional<String> caution, boolean more) {

    static final Found NOTHING_ASKED = new Found("", List.of(), Optional.empty(), Optional.empty(), false);

    /** More than anybody looks through; another word narrows it down. */
    private static final int MOST = 30;

    /** @param find finds so many at most, best first */
    static Found of(String words, IntFunction<FindResult> find, Function<Hit, FoundMoment> show) {
        FindResult result = find.apply(MOST + 1);
        return new Found(
                words,
                result.hits().stream().limit(MOST).map(show).toList(),
                result.suggestion(),
                result.caution(),
                result.hits().size() > MOST);
    }

    public boolean isAsked() {
        return !words.isBlank();
    }

    /** In words, for the page and for whoever listens to it. */
    public String count() {
        if (moments.isEmpty()) {
            return nearest.isPresent() || caution.isPresent() ? "No moment" : "Nobody says that";
        }
        String number = moments.size() == 1 ? "1 moment" : moments.size() + " moments";
        return more ? "The best " + number : number;
    }
}
