package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Lines of the list whose figures make no amount, wholly or in part: 0 g, −5 g, 1e9 g, ½½ tsp, 1//2 tsp. */
public final class BrokenAmounts {

    /** The rest of a figure that was read only in part: the "//2 tsp salt" of "1//2 tsp salt". */
    private static final Pattern CUT_FIGURE =
            Pattern.compile("^[/.,:;*+=×÷^-]*\\h*[\\d½¼¾⅓⅔⅛]++(?!\\h?%|\\h+flour|up\\b).*");

    private BrokenAmounts() {}

    /** One note for each such line, which was kept and used for nothing. */
    public static List<Note> in(Recipe recipe) {
        return recipe.lines().stream()
                .flatMap(line ->
                        sentence(line).map(text -> new Note(Place.of(recipe.source(), line.line()), text)).stream())
                .toList();
    }

    static Optional<String> sentence(IngredientLine line) {
        if (IngredientLineParser.refuses(line)) {
            return Optional.of("the amount in \"%s\" cannot be right and is not used; write it as 225 g or 1½ tsp."
                    .formatted(line.text()));
        }
        return line.quantity().isPresent()
                        && CUT_FIGURE.matcher(line.ingredient()).matches()
                ? Optional.of("the amount in \"%s\" was read only in part; write it as 225 g or 1½ tsp."
                        .formatted(line.text()))
                : Optional.empty();
    }
}
