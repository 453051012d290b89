package org.misecue.spoken;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Phrases.Kind;

/**
 * "One scoop is a quarter cup", "this little spoon, and that's half a teaspoon": what a speaker measures with who has no
 * cups, so that "four scoops" are a cup.
 */
final class OwnMeasures {

    /** What people dip into a bag. Common practice, no source. */
    private static final Set<String> VESSELS =
            Words.set("scoop mug ladle glass teacup beaker tumbler spoon measure handful dipper part");

    private static final Set<String> ARTICLES =
            Words.set("one a an each every the this that my our single little big small");

    private static final Set<String> EQUALS = Words.set("is holds hold takes means equals weighs are was");
    private static final Set<String> LOOSE = Set.of("about", "around", "roughly", "nearly");
    private static final Set<String> SAYS_SO = Words.set("and it that which just exactly here of mine so");
    /** "what is in the spoon is about a tablespoon". */
    private static final Set<String> CONTAINED = Words.set("in into from of inside");

    private static final Set<String> NOW = Set.of("today", "now");
    private static final int NOW_REACH = 2;
    private static final String SCOOP = "scoop";
    private static final Set<String> HAVING = Words.set("got have found find");
    private static final Set<String> ONLY = Words.set("only all what just");
    private static final Set<String> DETERMINED = Words.set("this that the my one a");
    private static final int ONLY_REACH = 5;
    private static final int ARTICLE_REACH = 4;
    private static final int TOLD_REACH = 6;

    /** Where it is told how much one is. */
    private record Told(int start, int end, String vessel, Quantity one) {}

    private final List<Told> told;
    private final Map<String, Quantity> sizes;

    private OwnMeasures(List<Told> told, Map<String, Quantity> sizes) {
        this.told = told;
        this.sizes = sizes;
    }

    /** Without those of which the speaker tells two things and takes none back. */
    private static Map<String, Quantity> sizes(List<Told> told, WordStream words) {
        Phrases phrases = new Phrases(words);
        Map<String, Told> sizes = new HashMap<>();
        Set<String> unsure = new HashSet<>();
        for (Told next : told) {
            Told before = sizes.put(next.vessel(), next);
            boolean same = before == null || before.one().equals(next.one());
            if (!same && !isTakenBack(words, phrases, before, next)) {
                unsure.add(next.vessel());
            }
        }
        return sizes.entrySet().stream()
                .filter(vessel -> !unsure.contains(vessel.getKey()))
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey, vessel -> vessel.getValue().one()));
    }

    /** "no, that's Tuesday's sum, rub it out, today a part is sixty". */
    private static boolean isTakenBack(WordStream words, Phrases phrases, Told before, Told next) {
        return phrases.within(Kind.REPAIR, before.end(), next.start())
                && words.saysAny(NOW, next.start() - NOW_REACH, next.start());
    }

    /** Of a speaker who tells of none. */
    static OwnMeasures none() {
        return new OwnMeasures(List.of(), Map.of());
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
        if (told.stream().noneMatch(one -> one.vessel().equals(SCOOP))) {
            onlyMeasure(words, grammar).ifPresent(told::add);
        }
        return new OwnMeasures(List.copyOf(told), sizes(told, words));
    }

    /** "all I've got is this quarter cup": what is scooped with from then on. */
    private static Optional<Told> onlyMeasure(WordStream words, QuantityGrammar grammar) {
        for (int at = 0; at < words.size(); at++) {
            if (HAVING.contains(words.text(at)) && words.saysAny(ONLY, at - ONLY_REACH, at)) {
                int from = at;
                for (int one = at + 1; one < at + ARTICLE_REACH; one++) {
                    Optional<SpokenQuantity> size =
                            DETERMINED.contains(words.text(one)) ? grammar.at(one + 1) : Optional.empty();
                    Optional<Told> told = size.filter(cup -> cup.unit().equals(Optional.of(Unit.CUP)))
                            .flatMap(SpokenQuantity::quantity)
                            .map(cup -> new Told(from, size.get().end(), SCOOP, cup));
                    if (told.isPresent()) {
                        return told;
                    }
                }
            }
        }
        return Optional.empty();
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
                ? twice(grammar, hedged ? at + 1 : at)
                        .map(size -> hedged ? size.with(new Amount.Approximate(size.amount(), loose)) : size)
                        .filter(size -> size.quantity()
                                .filter(one -> one.dimension() == Dimension.VOLUME || one.dimension() == Dimension.MASS)
                                .isPresent())
                : Optional.empty();
    }

    /** "sixty, sixty grams" is sixty grams. */
    private static Optional<SpokenQuantity> twice(QuantityGrammar grammar, int at) {
        Optional<SpokenQuantity> first = grammar.at(at);
        return first.filter(one -> one.unit().isEmpty())
                .flatMap(one ->
                        grammar.at(one.end()).filter(again -> again.amount().equals(one.amount())))
                .or(() -> first);
    }

    private static String vessel(String word) {
        String one = Words.singular(word);
        return one.endsWith("ful") && !one.equals("handful") ? one.substring(0, one.length() - 3) : one;
    }
}
