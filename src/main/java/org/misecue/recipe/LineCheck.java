package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;

/** Lines of the list that were kept but not understood: amounts that are none, missing units, no name. */
final class LineCheck implements RecipeCheck {

    /** The rest of a figure that was read only in part: the "//2 tsp salt" of "1//2 tsp salt". */
    private static final Pattern CUT_FIGURE =
            Pattern.compile("^[/.,:;*+=×÷^-]*\\h*[\\d½¼¾⅓⅔⅛]++(?!\\h?%|\\h+flour|up\\b).*");

    @Override
    public List<Note> notes(Recipe recipe, Pantry pantry) {
        return recipe.lines().stream()
                .flatMap(line -> sentence(line, pantry)
                        .map(text -> new Note(Place.of(recipe.source(), line.line()), text.formatted(shown(line))))
                        .stream())
                .toList();
    }

    private Optional<String> sentence(IngredientLine line, Pantry pantry) {
        if (new IngredientLineParser(pantry).refuses(line)) {
            return Optional.of("the amount in \"%s\" cannot be right and is not used; write it as 225 g or 1½ tsp.");
        }
        if (BareCount.isDoubtful(line, pantry)) {
            return Optional.of(
                    "\"%s\" counts pieces of what is weighed or measured; is a unit missing? Write it as 225 g or"
                            + " 1½ tsp.");
        }
        if (line.text().length() > IngredientLineParser.LONGEST) {
            return Optional.of(
                    "this line of %s characters is too long for an ingredient and is kept as it stands; put one"
                            + " ingredient on each line.");
        }
        if (line.ingredient().isEmpty()) {
            return Optional.of("\"%s\" names no ingredient; write amount and name on one line.");
        }
        return isCut(line)
                ? Optional.of("the amount in \"%s\" was read only in part; write it as 225 g or 1½ tsp.")
                : Optional.empty();
    }

    private static boolean isCut(IngredientLine line) {
        return line.quantity().isPresent()
                && CUT_FIGURE.matcher(line.ingredient()).matches();
    }

    private static String shown(IngredientLine line) {
        return line.text().length() > IngredientLineParser.LONGEST
                ? Integer.toString(line.text().length())
                : line.text();
    }
}
