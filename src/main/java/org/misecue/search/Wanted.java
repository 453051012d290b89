package org.misecue.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * One thing that should be found, in any of several wordings.
 *
 * @param amount the value of an amount, found however it is said
 * @param doing whether it is something that is done, not something that it is done with
 */
record Wanted(List<Wording> wordings, Optional<String> amount, boolean doing) {

    Wanted(List<Wording> wordings) {
        this(wordings, Optional.empty(), false);
    }

    /** What a match by sound alone is worth. */
    static final float BY_SOUND = 0.25f;

    /**
     * Words in this order.
     *
     * @param worth at most 1: how surely somebody who said this meant what is looked for
     * @param forms which other forms and sound-alikes of the words count
     */
    record Wording(List<Token> tokens, float worth, OtherForms forms) {
        Wording(List<Token> tokens, float worth) {
            this(tokens, worth, OtherForms.ALIKE);
        }
    }

    /** Whether a word stands for its other forms and its sound-alikes, too. */
    enum OtherForms {
        ALIKE,
        /** Who puts words between quotation marks remembers just these; where they were not said, memory may fail. */
        AFTER_ITSELF,
        NEVER
    }

    /**
     * Where it was said.
     *
     * @param from the tokens of the text are {@code [from, to)}
     */
    record Place(int from, int to, float worth) {}

    static final float AS_ASKED = 1f;
    static final float BY_OTHER_NAME = 0.8f;
    static final float BY_NEAR_SPELLING = 0.5f;
    static final float BY_BEGINNING = 0.5f;

    /** The wordings without those that hold another of no less worth: "desiccated coconut" is found by "coconut". */
    List<Wording> telling() {
        return wordings.stream()
                .filter(longer -> wordings.stream().noneMatch(shorter -> isIn(longer, shorter)))
                .toList();
    }

    private static boolean isIn(Wording longer, Wording shorter) {
        return shorter.tokens().size() < longer.tokens().size()
                && shorter.worth() >= longer.worth()
                && Collections.indexOfSubList(stems(longer), stems(shorter)) >= 0;
    }

    private static List<String> stems(Wording wording) {
        return wording.tokens().stream().map(Token::stem).toList();
    }

    /** All places in a window where it is said: an amount by its value, and otherwise the best of the wordings. */
    List<Place> places(List<Token> text, List<Window.Amount> amounts) {
        List<Place> said = amounts.stream()
                .filter(one -> amount.equals(Optional.of(one.key())))
                .map(one -> place(one, text))
                .filter(place -> place.from() < place.to())
                .toList();
        return said.isEmpty() ? places(text) : said;
    }

    private static Place place(Window.Amount amount, List<Token> text) {
        int from =
                (int) text.stream().filter(token -> token.to() <= amount.from()).count();
        int to = (int) text.stream().filter(token -> token.from() < amount.to()).count();
        return new Place(from, to, AS_ASKED);
    }

    private List<Place> places(List<Token> text) {
        List<Place> best = new ArrayList<>();
        for (int i = 0; i < text.size(); i++) {
            Place place = placeAt(text, i);
            if (place.worth() > 0
                    && (best.isEmpty() || place.worth() >= best.get(0).worth())) {
                if (!best.isEmpty() && place.worth() > best.get(0).worth()) {
                    best.clear();
                }
                best.add(place);
            }
        }
        return best;
    }

    private Place placeAt(List<Token> text, int at) {
        Place best = new Place(at, at, 0);
        for (Wording wording : wordings) {
            Place place = placeAt(text, at, wording);
            if (place.worth() > best.worth()) {
                best = place;
            }
        }
        return best;
    }

    private static Place placeAt(List<Token> text, int at, Wording wording) {
        Place nowhere = new Place(at, at, 0);
        List<Token> tokens = wording.tokens();
        if (wording.forms() == OtherForms.NEVER) {
            boolean said = text.get(at).word().equals(tokens.get(0).word());
            return said ? new Place(at, at + 1, wording.worth()) : nowhere;
        }
        if (tokens.size() == 1 && isWrittenApart(text, at, tokens.get(0).word())) {
            return new Place(at, at + 2, wording.worth());
        }
        if (at + tokens.size() > text.size()) {
            return nowhere;
        }
        boolean bySound = false;
        for (int i = 0; i < tokens.size(); i++) {
            Token said = text.get(at + i);
            if (!said.isFormOf(tokens.get(i))) {
                if (!said.soundsLike(tokens.get(i))) {
                    return nowhere;
                }
                bySound = true;
            }
        }
        return new Place(at, at + tokens.size(), bySound ? wording.worth() * BY_SOUND : wording.worth());
    }

    private static boolean isWrittenApart(List<Token> text, int at, String word) {
        return at + 1 < text.size()
                && word.startsWith(text.get(at).word())
                && word.equals(text.get(at).word() + text.get(at + 1).word());
    }
}
