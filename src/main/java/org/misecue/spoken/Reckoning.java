package org.misecue.spoken;

import java.util.Set;

/** Whether a number is only a step of a sum: a ratio, what is taken off, a percentage said again. */
final class Reckoning {

    private static final int PERCENT_REACH = 15;
    private static final Set<String> ONE = Set.of("one", "1");
    private static final Set<String> PERCENT = Set.of("percent", "%");
    private static final Set<String> CHANGES = Set.of("more", "less", "higher", "lower", "hotter", "cooler", "extra");
    private static final Set<String> TAKING = Set.of("drop", "take", "knock", "cut", "leave", "come", "about");

    private final WordStream words;

    Reckoning(WordStream words) {
        this.words = words;
    }

    /** "five to one", "one to one to one". */
    boolean isRatio(SpokenQuantity said) {
        boolean toOne = words.text(said.end()).equals("to") && ONE.contains(words.text(said.end() + 1));
        boolean fromNumber = words.text(said.start() - 1).equals("to")
                && ONE.contains(words.text(said.start()))
                && !words.text(said.start() - 2).isEmpty()
                && new NumberGrammar(words).at(said.start() - 2).isPresent();
        return toOne || fromNumber;
    }

    /** "two hundred less fifty", "ten percent of two hundred". */
    boolean isStep(SpokenQuantity said) {
        String next = words.text(said.end());
        boolean ofPercent = words.text(said.start() - 1).equals("of") && PERCENT.contains(words.text(said.start() - 2));
        return next.equals("less") || next.equals("minus") || ofPercent;
    }

    /** "seventy percent, I say seventy". */
    boolean isPercentAgain(SpokenQuantity said) {
        int length = said.end() - said.start();
        String number = words.normal(said.start(), said.end());
        for (int at = said.start() - 1; at > said.start() - PERCENT_REACH; at--) {
            if (PERCENT.contains(words.text(at))) {
                return words.normal(at - length, at).equals(number);
            }
        }
        return false;
    }

    /** "take ten off", "twenty degrees more". */
    boolean isTakenOff(SpokenQuantity said) {
        boolean changed = said.manner() == SpokenQuantity.Manner.HEAT && CHANGES.contains(words.text(said.end()));
        return changed || (words.text(said.end()).equals("off") && TAKING.contains(words.text(said.start() - 1)));
    }
}
