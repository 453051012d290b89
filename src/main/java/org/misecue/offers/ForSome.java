package org.misecue.offers;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.WordStream;

/** "If you're dairy free do eighty of oat milk", "for a vegan version use oil". */
final class ForSome implements Proposal.Frame {

    private static final Pattern NEED = Pattern.compile(
            "(?:if|for|to make|to keep)\\b(?: (?!but\\b|so\\b|because\\b)[\\w']+){0,9}? (?:(?:dairy|gluten|egg|nut|lactose|wheat) (?:free|intolerant|allergy)"
                    + "|vegan|vegans|coeliac|coeliacs|celiac|plant based|vegetarian|vegetarians|non dairy"
                    + "|(?:can't|doesn't|don't) (?:have|eat|do) (?:any )?(?:dairy|gluten|eggs?|nuts?|wheat|milk))\\b(?: (?:version|one|option|allergy|friends))?");
    private static final int LONGEST_NEED = 14;

    private final Foods foods;
    private final WordStream words;
    private final Conclusion conclusion;

    ForSome(Foods foods, Conclusion conclusion) {
        this.foods = foods;
        this.words = foods.words;
        this.conclusion = conclusion;
    }

    @Override
    public Optional<Proposal> at(int start) {
        Matcher need = NEED.matcher(words.normal(start, sentence(start)));
        if (!words.text(start).matches("if|for|to") || !need.lookingAt()) {
            return Optional.empty();
        }
        int end = start + Foods.count(need.group());
        return conclusion
                .from(end)
                .filter(told -> !told.use().inRecipe() && told.use().known())
                .flatMap(told -> foods.kin(told.use(), start, true)
                        .map(line -> new Proposal(start, told.use().end(), line, told.use(), told.verb(), end)));
    }

    private int sentence(int start) {
        int at = start + 1;
        while (at < start + LONGEST_NEED && at < words.size() && !words.wall(at)) {
            at++;
        }
        return at;
    }
}
