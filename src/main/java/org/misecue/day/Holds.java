package org.misecue.day;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;
import org.misecue.recipe.TableFile;
import org.misecue.recipe.Wait;

/** What cannot wait: by the table {@code holds.csv}, by raising agents in a wet mixture, and by what the method calls hot. */
final class Holds {

    /** Common practice, no source: the gas that lifts a cake is made as soon as the mixture is wet. */
    private static final Hold RAISED = new Hold(20, "a mixture with a raising agent goes into the oven soon");

    /** Common practice, no source. */
    private static final Hold HOT = new Hold(10, "the method takes it hot");

    /** Common practice, no source. */
    private static final Hold PROVED = new Hold(20, "a proved dough goes on rising");

    private static final Pattern RAISING =
            Pattern.compile("baking powder|bicarb|baking soda|self.rais", Pattern.CASE_INSENSITIVE);
    private static final Pattern WET = Pattern.compile(
            "egg|milk|water|yogh?urt|cream|oil|honey|syrup|juice|pur[ée]e|treacle|molasses|butter",
            Pattern.CASE_INSENSITIVE);

    private record Row(String technique, Pattern words, Hold hold) {}

    private static final List<Row> ROWS =
            TableFile.rows(Holds.class, "holds.csv").stream().map(Holds::row).toList();

    private final Recipe recipe;
    private final MethodOrder order;

    Holds(Recipe recipe, MethodOrder order) {
        this.recipe = recipe;
        this.order = order;
    }

    /** How long the work of a stretch may wait for another that needs it; empty where it keeps. */
    Optional<Hold> between(int made, int used) {
        if (order.takesHot(used, made)) {
            return Optional.of(HOT);
        }
        Stretch stretch = order.stretches().get(made);
        if (!stretch.waits().isEmpty()) {
            boolean proved =
                    stretch.waits().get(stretch.waits().size() - 1).what().equals("prove");
            return proved ? Optional.of(PROVED) : Optional.empty();
        }
        return ROWS.stream()
                .filter(row -> stretch.techniques().contains(row.technique)
                        && row.words.matcher(stretch.text()).find())
                .map(Row::hold)
                .findFirst()
                .or(() -> isRaised(made) && isBaked(used) ? Optional.of(RAISED) : Optional.empty());
    }

    private boolean isBaked(int stretch) {
        return order.stretches().get(stretch).waits().stream().anyMatch(wait -> wait.where() == Wait.Where.OVEN);
    }

    /** Whether a raising agent has met something wet by then, and nothing has chilled since. */
    private boolean isRaised(int stretch) {
        List<String> names = Stream.concat(order.reach(stretch).stream(), Stream.of(stretch))
                .filter(at -> order.stretches().get(at).waits().isEmpty())
                .flatMap(at -> order.stretches().get(at).uses().stream())
                .map(use -> use.in(recipe).ingredient())
                .toList();
        return names.stream().anyMatch(name -> RAISING.matcher(name).find())
                && names.stream().anyMatch(name -> WET.matcher(name).find());
    }

    private static Row row(String line) {
        String[] cells = line.split(" \\| ", -1);
        String words =
                Arrays.stream(cells[1].split(" ; ", -1)).map(String::strip).collect(Collectors.joining("|"));
        return new Row(
                cells[0].strip(),
                Pattern.compile(words, Pattern.CASE_INSENSITIVE | Pattern.DOTALL),
                new Hold(Integer.parseInt(cells[2].strip()), cells[3].strip()));
    }
}
