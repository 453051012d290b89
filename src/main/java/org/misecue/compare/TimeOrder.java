package org.misecue.compare;

import java.util.List;
import java.util.function.Predicate;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** The order of the times that serve one purpose, and the words that tell of it: "the first ten minutes", "another ten". */
final class TimeOrder {

    private static final int ORDINAL_REACH = 14;
    private static final int MORE_REACH = 4;

    private final Hearing heard;
    private final List<Setting> durations;

    TimeOrder(Hearing heard, List<Setting> durations) {
        this.heard = heard;
        this.durations = durations;
    }

    /** "another ten": of two times for one purpose, the one behind that which was said already. */
    boolean isMore(SpokenQuantity said) {
        return heard.phrases.within(Kind.MORE_OF_IT, said.start() - MORE_REACH, said.end() + 2);
    }

    boolean isSecond(SpokenQuantity said) {
        return heard.phrases.within(Kind.LATER_ONE, said.start() - ORDINAL_REACH, said.start());
    }

    boolean follows(Setting setting, Predicate<Setting> isSaid) {
        return !isSaid.test(setting) && earlier(setting).stream().anyMatch(isSaid);
    }

    /** "the first ten minutes" are a written time only where the recipe goes on with another. */
    boolean isFirstPart(SpokenQuantity said) {
        return heard.phrases.endsBefore(Kind.FIRST_PART, said.start());
    }

    List<Setting> later(Setting setting) {
        return durations.subList(durations.indexOf(setting) + 1, durations.size()).stream()
                .filter(later -> Purpose.of(later) == Purpose.of(setting))
                .toList();
    }

    /** The times for the same purpose that the recipe has before. */
    List<Setting> earlier(Setting setting) {
        return durations.subList(0, durations.indexOf(setting)).stream()
                .filter(earlier -> Purpose.of(earlier) == Purpose.of(setting))
                .toList();
    }

    /** Whether a time comes right behind another in the recipe. */
    boolean isNext(Setting setting, Setting last) {
        return durations.indexOf(last) + 1 == durations.indexOf(setting);
    }
}
