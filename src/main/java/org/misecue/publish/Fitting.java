package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * Makes a draft fit its box by leaving out whole parts, the least missed first, and at last whole ingredient lines. The
 * title and the allergens always stay.
 *
 * @param draft what fits
 * @param leftOut what does not, in the order in which it was dropped
 */
record Fitting(Draft draft, List<String> leftOut) {

    /**
     * @param shorter the ingredients with one measure for each line
     * @param place what to name when even title and allergens are too long
     * @throws BadInput if the limit is too small for those
     */
    static Fitting of(Draft draft, List<String> shorter, int limit, Place place) {
        List<String> leftOut = new ArrayList<>();
        Draft fitting = draft;
        for (Saving saving : savings(shorter)) {
            if (fits(fitting, limit)) {
                break;
            }
            Draft saved = saving.apply(fitting);
            if (!saved.equals(fitting)) {
                leftOut.add(saving.what());
                fitting = saved;
            }
        }
        if (!fits(fitting, limit)) {
            fitting = withFewerIngredients(fitting, limit, place, leftOut);
        }
        return new Fitting(fitting, List.copyOf(leftOut));
    }

    /** One way to make a draft shorter, and what is lost by it. */
    private record Saving(String what, Draft.Part part, List<String> instead) {
        Draft apply(Draft draft) {
            return draft.with(part, instead);
        }
    }

    private static List<Saving> savings(List<String> shorter) {
        return List.of(
                new Saving("the method", Draft.Part.METHOD, List.of()),
                new Saving("the second measure of each line", Draft.Part.INGREDIENTS, shorter),
                new Saving("oven, tin and times", Draft.Part.FIGURES, List.of()),
                new Saving("the chapters", Draft.Part.CHAPTERS, List.of()),
                new Saving("the list of amounts not said in the film", Draft.Part.UNSAID, List.of()));
    }

    private static Draft withFewerIngredients(Draft draft, int limit, Place place, List<String> leftOut) {
        Draft bare = draft.without(Draft.Part.INGREDIENTS);
        int least = bare.text().length();
        if (least > limit) {
            throw new BadInput(
                    place,
                    "the title and the allergens alone take %d characters and the limit of the description is %d; raise the limit"
                            .formatted(least, limit));
        }
        List<String> lines = draft.lines(Draft.Part.INGREDIENTS);
        int kept = most(lines.size(), count -> fits(draft.with(Draft.Part.INGREDIENTS, firstOf(lines, count)), limit));
        leftOut.add(counted(ingredients(lines) - ingredients(lines.subList(0, kept))));
        return kept == 0 ? bare : draft.with(Draft.Part.INGREDIENTS, firstOf(lines, kept));
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
        return low;
    }

    private static List<String> firstOf(List<String> lines, int kept) {
        List<String> first = new ArrayList<>(lines.subList(0, kept));
        while (!first.isEmpty() && !first.get(first.size() - 1).startsWith(IngredientText.BULLET)) {
            first.remove(first.size() - 1);
        }
        first.add("… the list goes on in the written recipe.");
        return first;
    }

    private static long ingredients(List<String> lines) {
        return lines.stream()
                .filter(line -> line.startsWith(IngredientText.BULLET))
                .count();
    }

    private static String counted(long lines) {
        return lines == 1 ? "1 ingredient line" : lines + " ingredient lines";
    }

    private static boolean fits(Draft draft, int limit) {
        return draft.text().length() <= limit;
    }
}
