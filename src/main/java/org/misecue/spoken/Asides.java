package org.misecue.spoken;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Numbers that measure nothing in this recipe, each with the reason. */
final class Asides {

    private final Prices prices;
    private final List<AsideRule> rules;

    Asides(WordStream words, Phrases phrases, List<NameHit> names) {
        this.prices = new Prices(words);
        this.rules = AsideRule.on(
                words,
                prices,
                new CountedThings(words, Places.ofNames(names)),
                new Labels(words, phrases, Places.ofNames(names)),
                new Bygones(words, phrases),
                new OtherStories(words, phrases, names),
                new Levels(words, Places.ofNames(names)));
    }

    /** A rule that knows some sorts of aside. */
    interface AsideRule {

        /** What switches it off. */
        Mechanism mechanism();

        Optional<Aside> of(SpokenQuantity said);

        /** Those of the rules that are on, in their order. */
        static List<AsideRule> on(WordStream words, AsideRule... rules) {
            return Stream.of(rules).filter(rule -> words.on(rule.mechanism())).toList();
        }

        /** What the first of the rules says that knows it. */
        static Optional<Aside> first(List<AsideRule> rules, SpokenQuantity said) {
            return rules.stream().flatMap(rule -> rule.of(said).stream()).findFirst();
        }
    }

    /** The reason why a quantity is an aside; empty if it may matter. */
    Optional<Aside> reason(SpokenQuantity said) {
        return AsideRule.first(rules, said);
    }

    /** Where the scan goes on: behind the pence of a price, and behind what it is the price of ("a bag"). */
    int end(SpokenQuantity said) {
        return prices.end(said);
    }
}
