package org.misecue.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Amount;
import org.misecue.spoken.Phrases.Kind;

/** Finds every quantity in the stream, hedged as the speaker hedges it, asides marked with their reason. */
public final class QuantityListener {

    private final WordStream words;
    private final QuantityGrammar grammar;
    private final Phrases phrases;
    private final Asides asides;

    public QuantityListener(WordStream words) {
        this.words = words;
        this.grammar = new QuantityGrammar(words);
        this.phrases = new Phrases(words);
        this.asides = new Asides(words, phrases);
    }

    /** In the order of the stream; none overlap. */
    public List<SpokenQuantity> all() {
        List<SpokenQuantity> all = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<SpokenQuantity> found = grammar.at(at);
            if (found.isEmpty() || isPronoun(found.get())) {
                at++;
                continue;
            }
            SpokenQuantity said = hedged(found.get());
            all.add(asides.reason(said).map(said::asideBecause).orElse(said));
            at = asides.end(found.get());
        }
        return List.copyOf(all);
    }

    /** "this one", "the light one", "one of those": no count. */
    private boolean isPronoun(SpokenQuantity said) {
        if (said.manner() != SpokenQuantity.Manner.BARE
                || said.end() != said.start() + 1
                || !words.text(said.start()).equals("one")) {
            return false;
        }
        String before = words.text(said.start() - 1);
        boolean counted = before.equals("just")
                || before.equals("only")
                || before.equals("is")
                || before.equals("need")
                || before.equals("want")
                || before.equals("and")
                || before.equals("of")
                || before.equals("then")
                || before.equals("so")
                || before.isEmpty();
        String next = words.text(said.end());
        return !counted || next.equals("of") || next.equals("by") || next.equals("at") || next.equals("side");
    }

    private SpokenQuantity hedged(SpokenQuantity said) {
        if (phrases.endsBefore(Kind.HEDGE_BEFORE, said.start())) {
            return said.with(new Amount.Approximate(said.amount(), words.normal(said.start() - 1, said.start())));
        }
        if (phrases.endAt(Kind.HEDGE_AFTER, said.end()).isPresent()) {
            return said.with(new Amount.Approximate(said.amount(), words.normal(said.end(), said.end() + 1)));
        }
        return said;
    }
}
