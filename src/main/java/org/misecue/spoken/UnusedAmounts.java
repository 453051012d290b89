package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.Phrases.Kind;

/** "not two hundred", "I was thinking four": amounts that are denied, or considered and dropped. */
final class UnusedAmounts implements Asides.AsideRule {

    private static final int THOUGHT = 5;

    private static final Set<String> THERE_WAS = Set.of("there was", "there were");
    private static final Set<String> BUT = Set.of("but");
    private static final int BUT_REACH = 3;

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
        if (phrases.endsBefore(Kind.DENIES, said.start()) && !words.wall(said.start())) {
            return Optional.of(Aside.of(Aside.Kind.DENIED, "denied: " + words.normal(said.start() - 1, said.end())));
        }
        if (isWhatThereWas(said)) {
            return Optional.of(Aside.of(Aside.Kind.THOUGHT, "what there was of it"));
        }
        int from = Math.max(story.clauseStart(said.start()), said.start() - THOUGHT);
        return phrases.within(Kind.THOUGHT, from, said.start())
                ? Optional.of(Aside.of(Aside.Kind.THOUGHT, "only thought of"))
                : Optional.empty();
    }

    /** "there were six but one was bad". */
    private boolean isWhatThereWas(SpokenQuantity said) {
        boolean was = THERE_WAS.contains(words.normal(said.start() - 2, said.start()));
        return was && words.saysAny(BUT, said.end(), said.end() + BUT_REACH);
    }
}
