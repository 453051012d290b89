package org.misecue.spoken;

import java.util.Optional;
import org.misecue.spoken.Phrases.Kind;

/** "not two hundred", "I was thinking four": amounts that are denied, or considered and dropped. */
final class UnusedAmounts implements Asides.AsideRule {

    private static final int THOUGHT = 5;

    private final WordStream words;
    private final Phrases phrases;
    private final Story story;

    UnusedAmounts(WordStream words, Phrases phrases, Story story) {
        this.words = words;
        this.phrases = phrases;
        this.story = story;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.DENIALS;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        if (phrases.endsBefore(Kind.DENIES, said.start())) {
            return Optional.of(Aside.of(Aside.Kind.DENIED, "denied: " + words.normal(said.start() - 1, said.end())));
        }
        int from = Math.max(story.clauseStart(said.start()), said.start() - THOUGHT);
        return phrases.within(Kind.THOUGHT, from, said.start())
                ? Optional.of(Aside.of(Aside.Kind.THOUGHT, "only thought of"))
                : Optional.empty();
    }
}
