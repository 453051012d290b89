package org.misecue.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;

/**
 * "One scoop is a quarter cup", "this little spoon, and that's half a teaspoon": what a speaker measures with who has no
 * cups, so that "four scoops" are a cup.
 */
final class OwnMeasures {

    /** What people dip into a bag. Common practice, no source. */
    private static final Set<String> VESSELS =
            Words.set("scoop mug ladle glass teacup beaker tumbler spoon measure handful dipper");

    private static final Set<String> ARTICLES =
            Words.set("one a an each every the this that my our single little big small");

    private static final Set<String> EQUALS = Words.set("is holds hold takes means equals weighs are was");
    private static final Set<String> LOOSE = Set.of("about", "around", "roughly", "nearly");
    private static final Set<String> SAYS_SO = Words.set("and it that which just exactly here of mine so");
    /** "what is in the spoon is about a tablespoon". */
    private static final Set<String> CONTAINED = Words.set("in into from of inside");

    private static final int ARTICLE_REACH = 4;
    private static final int TOLD_REACH = 6;

    /** Where it is told how much one is. */
    private record Told(int start, int end, String vessel, Quantity one) {}

    private final List<Told> told;
    private final Map<String, Quantity> sizes;

    private OwnMeasures(List<Told> told) {
        this.told = told;
        this.sizes = sizes(told);
    }

    /** Without those of which the speaker tells two things. */
    private static Map<String, Quantity> sizes(List<Told> told) {
        Map<String, Set<Quantity>> all = told.stream()
                .collect(Collectors.groupingBy(Told::vessel, Collectors.mapping(Told::one, Collectors.toSet())));
        return all.entrySet().stream()
                .filter(vessel -> vessel.getValue().size() == 1)
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        vessel -> vessel.getValue().iterator().next()));
    }

    /** Of a speaker who tells of none. */
    static OwnMeasures none() {
        return new OwnMeasures(List.of());
    }

    static OwnMeasures in(WordStream words) {
        if (!words.on(Mechanism.OWN_MEASURES)) {
            return none();
        }
        QuantityGrammar grammar = new QuantityGrammar(words, none());
        List<Told> told = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            String vessel = vessel(words.text(at));
            OptionalInt start = VESSELS.contains(vessel) ? article(words, at) : OptionalInt.empty();
            if (start.isPresent()) {
                size(words, grammar, at + 1)
                        .map(size -> new Told(
                                start.getAsInt(),
                                size.end(),
                                vessel,
                                size.quantity().orElseThrow()))
                        .ifPresent(told::add);
            }
        }
        return new OwnMeasures(List.copyOf(told));
    }

    /** How much one of the vessels is; empty for other words, and where the speaker tells two things of it. */
    Optional<Quantity> one(String word) {
        return sizes.isEmpty() ? Optional.empty() : Optional.ofNullable(sizes.get(vessel(word)));
    }

    /** So many of what one is; a loose one makes loose many. */
    static Optional<SpokenQuantity> many(int start, int end, Amount count, Quantity one) {
        return one.amount()
                .least()
                .map(count::times)
                .map(sum -> one.amount().hedged() && !sum.hedged() ? new Amount.Approximate(sum, "about") : sum)
                .map(sum -> SpokenQuantity.measured(start, end, sum, one.unit()));
    }

    /** Whether the amount only tells how much one of them is. */
    boolean isTold(SpokenQuantity said) {
        return told.stream().anyMatch(one -> one.start() < said.end() && said.start() < one.end());
    }

    /** Where the naming of the vessel begins: "one", "this one little"; empty for "her scoop" and "four scoops". */
    private static OptionalInt article(WordStream words, int vessel) {
        int start = vessel;
        while (start > vessel - ARTICLE_REACH && ARTICLES.contains(words.text(start - 1)) && !words.wall(start)) {
            start--;
        }
        boolean contains = CONTAINED.contains(words.text(start - 1)) && !words.wall(start);
        return start < vessel && !contains ? OptionalInt.of(start) : OptionalInt.empty();
    }

    /** "… is a quarter cup", "…, and that's half a teaspoon". */
    private static Optional<SpokenQuantity> size(WordStream words, QuantityGrammar grammar, int from) {
        int at = from;
        boolean equal = false;
        while (at < from + TOLD_REACH && (SAYS_SO.contains(words.text(at)) || EQUALS.contains(words.text(at)))) {
            equal |= EQUALS.contains(words.text(at));
            at++;
        }
        String loose = words.text(at);
        boolean hedged = LOOSE.contains(loose);
        return equal
                ? grammar.at(hedged ? at + 1 : at)
                        .map(size -> hedged ? size.with(new Amount.Approximate(size.amount(), loose)) : size)
                        .filter(size -> size.quantity()
                                .filter(one -> one.dimension() == Dimension.VOLUME || one.dimension() == Dimension.MASS)
                                .isPresent())
                : Optional.empty();
    }

    private static String vessel(String word) {
        String one = Words.singular(word);
        return one.endsWith("ful") && !one.equals("handful") ? one.substring(0, one.length() - 3) : one;
    }
}
