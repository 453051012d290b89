package org.misecue.offers;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.offers.Proposal.Frame;
import org.misecue.spoken.WordStream;

/** What the recipe has is named, and then what will do: "where it says lemon juice, vinegar will do", "for the walnuts, pecans are fine". */
final class NamedFirst implements Frame {

    private static final Pattern NAMING = Pattern.compile(
            "(?:for|where (?:it|the recipe|i|i've) (?:says?|said|put|put down|written|wrote|has|have)|when it says|in place of|failing) "
                    + "(?:the |my |your )?");
    private static final int REACH = 7;

    private final Foods foods;
    private final WordStream words;
    private final Conclusion conclusion;

    NamedFirst(Foods foods, Conclusion conclusion) {
        this.foods = foods;
        this.words = foods.words;
        this.conclusion = conclusion;
    }

    @Override
    public Optional<Proposal> at(int start) {
        Matcher naming = NAMING.matcher(words.normal(start, start + REACH) + " ");
        if (!naming.lookingAt()) {
            return Optional.empty();
        }
        int at = start + naming.group().strip().split(" ").length;
        return foods.ownAt(at).flatMap(own -> {
            int line = foods.lineOf(own);
            return conclusion
                    .from(own.end())
                    .filter(told -> !told.use().inRecipe())
                    .filter(told -> told.use().start() <= own.end() + 2)
                    .map(told -> new Proposal(start, told.use().end(), line, told.use(), told.verb(), own.end()));
        });
    }
}
