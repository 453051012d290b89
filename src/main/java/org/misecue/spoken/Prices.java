package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Unit;
import org.misecue.spoken.SpokenQuantity.Manner;

/** "two pound fifty", "£2.50", "a dollar ninety", "five pounds for the lot": money where nothing is weighed. */
final class Prices implements Asides.AsideRule {

    private static final Set<String> MONEY = Words.set(
            "quid pence p dollars dollar euros euro bucks buck cents rupees rupee rand pesos kroner naira shillings francs "
                    + "ringgit sen yen yuan baht lira dirham dirhams centavos kobo zloty kronor");

    private static final Set<String> PER = Set.of("for", "the", "per");
    /** "as thick as a pound coin". */
    private static final Set<String> COINS = Set.of("coin", "note");

    private static final Set<String> SHOPS = Words.set("shop shops market supermarket store sale village bakery");

    private final WordStream words;

    Prices(WordStream words) {
        this.words = words;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.PRICES;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        return isMoney(said) || isPriced(said) ? Optional.of(Aside.of(Aside.Kind.PRICE, "a price")) : Optional.empty();
    }

    private boolean isMoney(SpokenQuantity said) {
        String first = words.text(said.start());
        if (first.startsWith("£") || first.startsWith("$") || first.startsWith("€")) {
            return true;
        }
        String next = words.text(said.end());
        if (MONEY.contains(next) || COINS.contains(next)) {
            return true;
        }
        boolean bare = said.unit().isEmpty();
        if (bare && MONEY.contains(words.text(said.start() - 1))) {
            return true;
        }
        boolean pounds = said.unit().filter(unit -> unit == Unit.POUND).isPresent();
        return pounds
                && (isPence(next)
                        || isPenceEach(said.end())
                        || inShop(said.end())
                        || next.equals("for")
                        || next.equals("each"));
    }

    /** "twelve euro for a gram", "fifty rupees the kilo": what the money buys. */
    private boolean isPriced(SpokenQuantity said) {
        int at = said.start() - 1;
        if (PER.contains(words.text(at))) {
            at--;
        }
        return said.manner() == Manner.MEASURED && MONEY.contains(words.text(at));
    }

    /** "two pounds in a charity shop". */
    private boolean inShop(int at) {
        boolean place = words.text(at).equals("in")
                || words.text(at).equals("at")
                || words.text(at).equals("from");
        for (int i = at; place && i < at + 5; i++) {
            if (SHOPS.contains(words.text(i))) {
                return true;
            }
        }
        return false;
    }

    /** "two pound ten a tub". */
    private boolean isPenceEach(int at) {
        return new NumberGrammar(words)
                .at(at)
                .filter(pence ->
                        words.text(pence.end()).equals("a") && QuantityWords.isPacking(words.text(pence.end() + 1)))
                .isPresent();
    }

    private static boolean isPence(String word) {
        return NumberWords.TENS.containsKey(word) || NumberWords.TEENS.containsKey(word) || word.matches("\\d\\d");
    }

    int end(SpokenQuantity said) {
        if (!isMoney(said) || !words.on(mechanism())) {
            return said.end();
        }
        int end = isPence(words.text(said.end())) ? said.end() + 1 : said.end();
        if (isPenceEach(end)) {
            end = new NumberGrammar(words).at(end).map(SpokenNumber::end).orElse(end);
        }
        if (words.text(end).equals("for")) {
            // "two pound fifty for four": how many one gets is part of the price.
            return new NumberGrammar(words).at(end + 1).map(SpokenNumber::end).orElse(end);
        }
        boolean each = words.text(end).equals("a") && QuantityWords.isPacking(words.text(end + 1));
        return each ? end + 2 : end;
    }
}
