package org.misecue.offers;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** What follows a condition: "…use two hundred of yoghurt", "…yoghurt is fine". */
final class Conclusion {

    private static final int REACH = 9;
    private static final int WITH_REACH = 7;
    private static final Set<String> GOES_WITH = Words.set("and with thinned let mixed plus");
    private static final Set<String> ANOTHER_DOES =
            Words.set("i i'm i've we we've we're she he they mine don't leave skip");

    private final Foods foods;
    private final WordStream words;
    private final Verdicts verdicts;

    Conclusion(Foods foods, Verdicts verdicts) {
        this.foods = foods;
        this.words = foods.words;
        this.verdicts = verdicts;
    }

    /** A food that is told to be taken, and where that is told. */
    record Told(Portion use, int verb) {}

    /** The first conclusion that begins in the words behind the condition. */
    Optional<Told> from(int start) {
        for (int at = start; at < start + REACH && at < words.size(); at++) {
            if (ANOTHER_DOES.contains(words.text(at)) && !words.text(at + 1).matches("think|find|would|reckon")) {
                return Optional.empty();
            }
            Optional<Told> told = at(at);
            if (told.isPresent()) {
                return told;
            }
        }
        return Optional.empty();
    }

    private Optional<Told> at(int at) {
        OptionalInt behind = verdicts.useAt(at);
        if (behind.isPresent()) {
            Optional<Portion> use = foods.anyAt(behind.getAsInt());
            if (use.isPresent()) {
                return use.map(food -> new Told(food, at));
            }
        }
        return foods.at(at)
                .or(() -> foods.anyAt(at).filter(food -> food.end() <= food.nameStart() + 2))
                .flatMap(food -> pleases(food));
    }

    /** Right behind the food, or behind what goes with it: "milk and a squeeze of lemon does the same job". */
    private Optional<Told> pleases(Portion food) {
        for (int at = food.end(); at < food.end() + WITH_REACH; at++) {
            if (verdicts.pleasesAt(at)) {
                return Optional.of(new Told(food, at));
            }
            boolean goesOn = food.known() && (GOES_WITH.contains(words.text(at)) || at > food.end());
            if (!goesOn || words.wall(at)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
