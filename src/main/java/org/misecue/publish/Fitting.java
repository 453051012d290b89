package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * Makes a draft fit its box by leaving out whole parts, the least missed first, and at last whole ingredient lines. The
 * title and the allergens always stay.
 *
 * @param text what fits
 * @param leftOut what does not, in the order in which it was dropped
 */
record Fitting(String text, List<String> leftOut) {

    /** The shorter forms of parts that have one. */
    record Shorter(Object ingredients, Object method, String goesOn) {}

    /**
     * @param writing the text of a draft
     * @param limit in UTF-16 units
     * @param place what to name when even title and allergens are too long
     * @throws BadInput if the limit is too small for those
     */
    static Fitting of(Draft draft, Shorter shorter, Function<Draft, String> writing, int limit, Place place) {
        return new Fitter(writing, limit, place).fit(draft, shorter);
    }

    /** One way to make a draft shorter, and what is lost by it. */
    private record Saving(String what, UnaryOperator<Draft> way) {}

    private static final class Fitter {

        private final Function<Draft, String> writing;
        private final int limit;
        private final Place place;
        private final List<String> leftOut = new ArrayList<>();

        Fitter(Function<Draft, String> writing, int limit, Place place) {
            this.writing = writing;
            this.limit = limit;
            this.place = place;
        }

        Fitting fit(Draft draft, Shorter shorter) {
            Draft fitting = draft;
            for (Saving saving : savings(shorter)) {
                if (fits(fitting)) {
                    break;
                }
                Draft saved = saving.way().apply(fitting);
                if (!writing.apply(saved).equals(writing.apply(fitting))) {
                    leftOut.add(saving.what());
                    fitting = saved;
                }
            }
            if (!fits(fitting)) {
                fitting = withFewerIngredients(fitting, shorter.goesOn());
            }
            return new Fitting(writing.apply(fitting), List.copyOf(leftOut));
        }

        private static List<Saving> savings(Shorter shorter) {
            return List.of(
                    new Saving(
                            "all but the first sentence of each step",
                            draft -> replaced(draft, "method", shorter.method())),
                    new Saving("the method", draft -> draft.without("method")),
                    new Saving(
                            "the second measure of each line",
                            draft -> replaced(draft, "ingredients", shorter.ingredients())),
                    new Saving("the summary", draft -> draft.without("summary")),
                    new Saving("oven, tin and times", draft -> draft.without("figures")),
                    new Saving("the chapters", draft -> draft.without("chapters")),
                    new Saving("the substitutions said in the film", draft -> draft.without("offers")),
                    new Saving("the list of amounts not said in the film", draft -> draft.without("unsaid")),
                    new Saving("the address of the recipe's page", draft -> draft.without("url")));
        }

        private static Draft replaced(Draft draft, String name, Object shorter) {
            return draft.has(name) ? draft.with(name, shorter) : draft;
        }

        private Draft withFewerIngredients(Draft draft, String goesOn) {
            Draft bare = draft.without("ingredients");
            int least = writing.apply(bare).length();
            if (least > limit) {
                throw new BadInput(
                        place,
                        "the title and the allergens alone take %d characters and the limit of the description is %d; raise the limit"
                                .formatted(least, limit));
            }
            int lines = draft.ingredientLines();
            int kept = most(lines, count -> fits(draft.withIngredients(count, goesOn)));
            leftOut.add(counted(lines - kept));
            return kept == 0 ? bare : draft.withIngredients(kept, goesOn);
        }

        private boolean fits(Draft draft) {
            return writing.apply(draft).length() <= limit;
        }
    }

    /** The largest count below the end that fits; 0 where none does. More lines never take less room. */
    private static int most(int end, IntPredicate fits) {
        int low = 0;
        int high = end - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (fits.test(middle)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return Math.max(low, 0);
    }

    private static String counted(int lines) {
        return lines == 1 ? "1 ingredient line" : lines + " ingredient lines";
    }
}
