package org.misecue.compare;

import java.util.Set;
import org.misecue.recipe.Setting;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/** What the words of the step tell that states a time. */
final class StepWords {

    /** How much one of its words, heard around a time, speaks for it. From listening; no source. */
    static final double NAMED = 0.15;

    private static final int NAMED_BEFORE = 20;
    private static final int NAMED_BEHIND = 8;
    private static final Set<String> NOT_TELLING =
            Words.set("minute hour out oven bake leave rest stand cool cover chill");

    private final Hearing heard;

    StepWords(Hearing heard) {
        this.heard = heard;
    }

    private String text(Setting setting) {
        return setting.step() == 0
                ? ""
                : heard.recipe.steps().get(setting.step() - 1).text();
    }

    /** "turn out onto a rack and leave for 1 hour, until cold". */
    boolean isLeftToCool(Setting setting) {
        Set<String> step = Words.content(text(setting));
        return step.contains("cold") || step.contains("cool");
    }

    /** "fry for 2 minutes on each side". */
    boolean isPerSide(Setting setting) {
        return text(setting).contains(" side");
    }

    /** How much the words around a time speak for the step of a setting. */
    double named(Setting setting, SpokenQuantity said) {
        Set<String> own = Words.content(text(setting));
        double named = 0;
        for (int at = said.start() - NAMED_BEFORE; at < said.start(); at++) {
            named += tells(own, at) ? NAMED : 0;
        }
        for (int at = said.end();
                at < said.end() + NAMED_BEHIND && !heard.words.text(at).equals("then");
                at++) {
            named += tells(own, at) ? NAMED : 0;
        }
        return Math.min(4 * NAMED, named);
    }

    private boolean tells(Set<String> own, int at) {
        String word = Words.singular(heard.words.text(at));
        return own.contains(word) && !NOT_TELLING.contains(word);
    }
}
