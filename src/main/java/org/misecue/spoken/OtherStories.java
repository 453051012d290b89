package org.misecue.spoken;

import java.util.List;
import java.util.Optional;

/** Amounts of other people and other times, of what viewers could do instead, denied ones and ones only thought of. */
final class OtherStories implements Asides.AsideRule {

    private static final int AND_REACH = 6;

    private final WordStream words;
    private final Story story;
    private final List<Asides.AsideRule> rules;
    private Optional<SpokenQuantity> lastOfOthers = Optional.empty();

    OtherStories(WordStream words, Phrases phrases, List<NameHit> names) {
        this.words = words;
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
        Optional<Aside> aside = Asides.AsideRule.first(rules, said).or(() -> asBefore(said));
        aside.ifPresent(found -> story.told(said));
        aside.filter(found -> found.kind() == Aside.Kind.OTHER_PEOPLE)
                .ifPresent(found -> lastOfOthers = Optional.of(said));
        return aside;
    }

    /** "she'd put a pound of prunes in hers and half a dozen eggs". */
    private Optional<Aside> asBefore(SpokenQuantity said) {
        return lastOfOthers
                .filter(last -> said.start() > last.end() && said.start() - last.end() <= AND_REACH)
                .filter(last -> words.text(said.start() - 1).equals("and")
                        && !words.text(said.end()).equals("is")
                        && !OwnDoing.endsAt(words, said.start()))
                .map(last -> Aside.SOMEBODY_ELSES);
    }
}
