package org.misecue.offers;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.narration.Narration;
import org.misecue.offers.Proposal.Frame;
import org.misecue.pantry.Allergen;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.Phrases;

/** Finds the substitutions that are offered to viewers, each with its amount, its moment and what it brings along. */
public final class Offers {

    private final Foods foods;
    private final Phrases phrases;
    private final List<Frame> frames;

    private Offers(Recipe recipe, Narration narration, Pantry pantry) {
        this.foods = new Foods(recipe, narration, pantry);
        this.phrases = new Phrases(foods.words);
        Verdicts verdicts = new Verdicts(foods.words);
        Conclusion conclusion = new Conclusion(foods, verdicts);
        Lacking lacking = new Lacking(foods, conclusion);
        this.frames = List.of(
                lacking,
                new LackingBehind(foods, verdicts, lacking, conclusion),
                new Having(foods, conclusion),
                new ForSome(foods, conclusion),
                new Asked(foods, verdicts),
                new Swapping(foods),
                new InsteadOf(foods, verdicts, conclusion),
                new StandingIn(foods, verdicts),
                new NamedFirst(foods, conclusion));
    }

    /** In the order in which they are offered; what is offered again counts once, at its first moment. */
    public static List<Offer> of(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        return heard(recipe, narrations, pantry, Voice.OFFERED);
    }

    /** What the speaker does otherwise than the recipe, as far as it is said like an offer: "I'm using yoghurt instead". */
    public static List<Offer> changes(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        return heard(recipe, narrations, pantry, Voice.OWN);
    }

    private static List<Offer> heard(Recipe recipe, List<Narration> narrations, Pantry pantry, Voice voice) {
        Map<List<String>, Offer> found = new LinkedHashMap<>();
        for (Narration narration : narrations) {
            for (Offer offer : new Offers(recipe, narration, pantry).all(voice)) {
                found.merge(List.of(offer.instead(), offer.use()), offer, Offers::folded);
            }
        }
        return List.copyOf(found.values());
    }

    /** The first, with an amount that was told only later. */
    private static Offer folded(Offer first, Offer later) {
        boolean amountLater = first.amount().isEmpty() && later.amount().isPresent();
        return amountLater
                ? new Offer(
                        first.instead(),
                        first.use(),
                        later.amount(),
                        first.moment(),
                        first.quote(),
                        later.sameAmount(),
                        first.with(),
                        first.brings())
                : first;
    }

    private List<Offer> all(Voice voice) {
        List<Offer> offers = new ArrayList<>();
        int at = 0;
        while (at < foods.words.size()) {
            int start = at;
            Optional<Proposal> found =
                    frames.stream().flatMap(frame -> frame.at(start).stream()).findFirst();
            List<Proposal> all = found.map(this::withOthers).orElse(List.of());
            all.stream()
                    .filter(one -> Voice.at(one, foods.words, phrases) == voice)
                    .forEach(one -> offers.add(offer(one)));
            at = all.stream()
                    .reduce((one, other) -> other)
                    .map(Proposal::end)
                    .filter(end -> end > start)
                    .orElse(start + 1);
        }
        return offers;
    }

    /** "use crème fraîche or mascarpone": each of several that may be taken. */
    private List<Proposal> withOthers(Proposal first) {
        List<Proposal> all = new ArrayList<>(List.of(first));
        int end = first.use().end();
        while (foods.words.text(end).equals("or") && !foods.words.wall(end)) {
            Optional<Portion> other =
                    foods.at(end + 1).filter(food -> !food.lines().contains(first.line()) && !food.inRecipe());
            if (other.isEmpty()) {
                break;
            }
            end = other.get().end();
            all.add(new Proposal(
                    first.start(),
                    Math.max(end, first.end()),
                    first.line(),
                    other.get(),
                    first.verb(),
                    first.clause()));
        }
        return all;
    }

    private Offer offer(Proposal proposal) {
        IngredientLine line = foods.lines.get(proposal.line());
        Portion use = proposal.use();
        OfferedAmount amount = OfferedAmount.of(proposal, line, foods);
        Optional<Portion> with = Companion.of(use, foods);
        String withWords =
                with.map(one -> foods.words.normal(use.end(), one.end())).orElse("");
        int end = Math.max(proposal.end(), with.map(Portion::end).orElse(0));
        return new Offer(
                line.ingredient(),
                foods.nameFor(use, proposal.line()),
                amount.quantity(),
                foods.words.moment(proposal.start()),
                foods.words.quote(proposal.start(), end),
                amount.same(),
                withWords,
                brings(use, with, proposal.line()));
    }

    private Brings brings(Portion use, Optional<Portion> with, int line) {
        List<Optional<Ingredient>> all = Stream.concat(
                        Stream.of(foods.ingredientFor(use, line)), with.stream().map(foods::ingredientOf))
                .toList();
        Set<Allergen> contains = EnumSet.noneOf(Allergen.class);
        Set<Allergen> check = EnumSet.noneOf(Allergen.class);
        Set<String> elsewhere = new LinkedHashSet<>();
        for (Optional<Ingredient> one : all) {
            one.ifPresent(food -> {
                contains.addAll(food.allergens());
                check.addAll(food.checkLabel());
                elsewhere.addAll(food.elsewhere());
            });
        }
        check.removeAll(contains);
        boolean known = all.stream().allMatch(Optional::isPresent);
        return new Brings(Set.copyOf(contains), Set.copyOf(check), List.copyOf(elsewhere), known);
    }
}
