package org.misecue.spoken;

import java.util.List;
import java.util.Optional;

/** Amounts of other people and other times, of what viewers could do instead, denied ones and ones only thought of. */
final class OtherStories implements Asides.AsideRule {

    private final Story story;
    private final List<Asides.AsideRule> rules;

    OtherStories(WordStream words, Phrases phrases, List<NameHit> names) {
        this.story = new Story(words, names);
        this.rules = Asides.AsideRule.on(
                words,
                new UnusedAmounts(words, phrases, story),
                new OtherPeople(words, phrases, story),
                new OtherTimes(words, phrases, story),
                new Alternatives(words, phrases, story));
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.OTHER_STORIES;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        Optional<Aside> aside = Asides.AsideRule.first(rules, said);
        aside.ifPresent(found -> story.told(said));
        return aside;
    }
}
