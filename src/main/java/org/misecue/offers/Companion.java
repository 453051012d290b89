package org.misecue.offers;

import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.Words;

/** What goes with an offered food: "with a squeeze of lemon", "and a splash of milk". */
final class Companion {

    private static final Set<String> A_LITTLE =
            Words.set("squeeze splash drop dash pinch touch spoonful little bit few knob");

    private Companion() {}

    static Optional<Portion> of(Portion use, Foods foods) {
        int at = use.end();
        if (!foods.words.text(at).matches("with|and|plus") || foods.words.wall(at)) {
            return Optional.empty();
        }
        int next = at + 1;
        boolean little = foods.words.text(next).equals("a") && A_LITTLE.contains(foods.words.text(next + 1));
        if (little) {
            boolean of = foods.words.text(next + 2).equals("of");
            int name = of ? next + 3 : next + 2;
            return foods.at(name).or(() -> foods.at(next));
        }
        return foods.at(next).filter(food -> food.amount().isPresent());
    }
}
