package org.misecue.offers;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.WordStream;

/** Said right behind an ingredient: "margarine works too", "or use oat milk", "you can use apples instead". */
final class StandingIn implements Proposal.Frame {

    private static final Pattern ALTERNATIVE = Pattern.compile(
            "(?:(?:is|are|makes?|would be|would make) (?:also )?(?:a|an) (?:(?:really|very) )?(?:\\w+ )?"
                    + "(?:alternative|substitute|swap|stand in|replacement) (?:to|for|in place of)"
                    + "|(?:can|could|will|would|may) (?:\\w+ )?(?:go in|stand in|step in) (?:for|instead of|in place of)) ");
    private static final int REACH = 5;

    private final Foods foods;
    private final WordStream words;
    private final Verdicts verdicts;

    StandingIn(Foods foods, Verdicts verdicts) {
        this.foods = foods;
        this.words = foods.words;
        this.verdicts = verdicts;
    }

    @Override
    public Optional<Proposal> at(int start) {
        return orUse(start)
                .or(() -> alternativeTo(start))
                .or(() -> failingThat(start))
                .or(() -> useInstead(start))
                .or(() -> youCanUse(start))
                .or(() -> works(start))
                .or(() -> orIfYouLike(start));
    }

    private Optional<Proposal> orUse(int start) {
        if (!words.text(start).equals("or")) {
            return Optional.empty();
        }
        int verb = start + 1;
        while (words.text(verb).matches("you|can|could|might|may|just|even|also|else|if|like|prefer|want|always")) {
            verb++;
        }
        int at = verb;
        OptionalInt behind = verdicts.useAt(verb);
        return behind.isPresent()
                ? foods.at(behind.getAsInt()).flatMap(use -> kin(start, at, use, true))
                : Optional.empty();
    }

    /** "spelt is a nice alternative to the wholemeal". */
    private Optional<Proposal> alternativeTo(int start) {
        return foods.at(start).flatMap(use -> {
            Matcher named = ALTERNATIVE.matcher(words.normal(use.end(), use.end() + 10));
            if (!named.lookingAt()) {
                return Optional.empty();
            }
            int behind = use.end() + named.group().strip().split(" ").length;
            return foods.ownOrPointed(behind, start)
                    .filter(own -> !use.lines().contains(own.line()))
                    .map(own -> new Proposal(start, own.end(), own.line(), use, use.end(), start));
        });
    }

    /** "or, failing that, a tablespoon of instant coffee". */
    private Optional<Proposal> failingThat(int start) {
        return words.normal(start, start + 2).equals("failing that")
                ? foods.at(start + 2).flatMap(use -> kin(start, start, use, true))
                : Optional.empty();
    }

    /** "or margarine if you prefer". */
    private Optional<Proposal> orIfYouLike(int start) {
        if (!words.text(start).equals("or") || words.wall(start)) {
            return Optional.empty();
        }
        return foods.at(start + 1)
                .filter(
                        use -> words.normal(use.end(), use.end() + 6)
                                .matches(
                                        "(?:instead|if (?:you prefer|you like|you want|you fancy|that's|you've got|that is|you'd|you're|it is all|you have|you can't|you haven't)|whatever you|whichever you|would (?:work|do|be fine)|works|will (?:do|work)|is fine)\\b.*"))
                .flatMap(use -> kin(start, start, use, false));
    }

    /** "you can use all sultanas if you like", "you could also use pecans". */
    private Optional<Proposal> youCanUse(int start) {
        boolean can = words.text(start).equals("you") && words.text(start + 1).matches("can|could|might|may");
        int verb = start + 2;
        while (words.text(verb).matches("also|just|always|easily|totally|happily|absolutely")) {
            verb++;
        }
        OptionalInt behind =
                can && words.text(verb).matches("use|do|have") ? verdicts.useAt(verb) : OptionalInt.empty();
        int at = verb;
        return behind.isPresent()
                ? foods.at(behind.getAsInt()).flatMap(use -> kin(start, at, use, false))
                : Optional.empty();
    }

    /** "you can use apples instead". */
    private Optional<Proposal> useInstead(int start) {
        OptionalInt behind = verdicts.useAt(start);
        if (behind.isEmpty()) {
            return Optional.empty();
        }
        return foods.at(behind.getAsInt())
                .filter(use -> words.text(use.end()).equals("instead")
                        && !words.wall(use.end())
                        && !words.text(use.end() + 1).equals("of"))
                .flatMap(use -> kin(start, start, use, true));
    }

    private Optional<Proposal> works(int start) {
        Optional<Portion> food = foods.at(start).filter(use -> verdicts.servesAt(use.end()));
        if (food.isEmpty()) {
            return Optional.empty();
        }
        Portion use = food.get();
        boolean anyOfIt = use.inRecipe() && isAny(start, use);
        if (anyOfIt) {
            return Optional.of(
                    new Proposal(start, use.end(), foods.lineOf(use), anySort(start, use), use.end(), start));
        }
        return kin(start, use.end(), use, false);
    }

    private boolean isAny(int start, Portion use) {
        for (int at = start; at < use.end(); at++) {
            if (words.text(at).equals("any")) {
                return true;
            }
        }
        return false;
    }

    private static Portion anySort(int start, Portion use) {
        return new Portion(start, use.end(), use.amount(), start, use.lines(), use.known());
    }

    private Optional<Proposal> kin(int start, int verb, Portion use, boolean told) {
        if (use.inRecipe() || use.end() - start > REACH + 8) {
            return Optional.empty();
        }
        return foods.kin(use, start, told).map(line -> new Proposal(start, use.end(), line, use, verb, start));
    }
}
