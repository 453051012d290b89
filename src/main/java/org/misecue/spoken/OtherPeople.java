package org.misecue.spoken;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.spoken.Phrases.Kind;

/** "my sister puts three in", "the neighbour uses two", "at the bakery we did forty": amounts of other kitchens. */
final class OtherPeople implements Asides.AsideRule {

    private static final Set<String> DOING = Words.set(
            "puts put does did do call makes made uses used adds added has had takes took likes liked swore swears always "
                    + "reckons say says said tell wrote cuts gives calls bakes baked eats ate");
    private static final Set<String> THIRD_PERSON = Set.of("puts", "uses", "adds", "swears", "reckons");
    private static final Set<String> THINGS = Words.set("it that this which recipe cake one sheet mix batter what and");
    private static final Set<String> ASKS = Set.of("how much", "what is in", "what is that", "how many", "what have");
    private static final Set<String> COPULAS = Set.of("was", "is");
    private static final Set<String> ELDERS =
            Words.set("mother mum mam mom nan nana gran grandma granny gramma auntie dad");
    private static final Set<String> KIN = Words.set("uncle aunt aunty sister brother cousin neighbour neighbor granda "
            + "grandad granddad grandpa granpa mother-in-law");
    private static final Set<String> SMALL = Words.set("he she always only just now though who");
    /** "mum says" may be an answer of one who is in the kitchen. */
    private static final Set<String> NO_VERBS = Words.set("says this less plus gives grams cups spoons eggs ounces");

    private static final int SHORTEST_VERB = 3;
    private static final Set<String> YES = Words.set("yes yeah aye yep right lovely");
    private static final int ASKED_REACH = 14;
    private static final Set<String> SHE = Set.of("she", "he");
    private static final int DOES_REACH = 8;

    private final WordStream words;
    private final Phrases phrases;
    private final Story story;

    OtherPeople(WordStream words, Phrases phrases, Story story) {
        this.words = words;
        this.phrases = phrases;
        this.story = story;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.OTHER_PEOPLE;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        if (isAnswer(said)) {
            return Optional.empty();
        }
        int to = said.start();
        int from = story.clauseStart(to);
        return phrases.within(Kind.ELSEWHERE, from, to)
                        || isSomebodys(said)
                        || (!OwnDoing.endsAt(words, to)
                                && (someoneDoes(from, to) || somebodyElseDoes(from, to) || kinDoes(from, to)))
                ? Optional.of(Aside.SOMEBODY_ELSES)
                : Optional.empty();
    }

    /** "how much have you given me? Sixty, she says, sixty grams, yes": somebody else who is in the kitchen. */
    private boolean isAnswer(SpokenQuantity said) {
        String before = words.normal(said.start() - ASKED_REACH, said.start());
        boolean asked = ASKS.stream().anyMatch(before::contains) && before.contains(" says");
        return asked
                && (words.saysAny(YES, said.start() - 2, said.start())
                        || words.saysAny(YES, said.end(), said.end() + 2));
    }

    /** "six ounces was my mother's figure", "mother's was two hundred". */
    private boolean isSomebodys(SpokenQuantity said) {
        boolean behind = COPULAS.contains(words.text(said.end()))
                && phrases.within(Kind.OTHER_PEOPLE, said.end() + 1, said.end() + 4);
        boolean before = words.text(said.start() - 1).equals("was")
                && words.text(said.start() - 2).equals("is")
                && ELDERS.contains(words.text(said.start() - 3));
        return behind || before;
    }

    /** "my sister … puts three in": a person, and what she does within a few words. */
    private boolean someoneDoes(int from, int to) {
        OptionalInt person = phrases.lastWithin(Kind.OTHER_PEOPLE, from, to);
        if (person.isEmpty()) {
            return false;
        }
        return words.saysAny(DOING, person.getAsInt() + 1, Math.min(to, person.getAsInt() + DOES_REACH));
    }

    /** "mum starts with a kilo of it", "my uncle he chucks in two": kin, and any verb in the third person right behind. */
    private boolean kinDoes(int from, int to) {
        for (int at = from; at < to; at++) {
            boolean kin = ELDERS.contains(words.text(at)) || KIN.contains(words.text(at));
            int verb = SMALL.contains(words.text(at + 1)) ? at + 2 : at + 1;
            if (kin && verb < to && isThirdPerson(words.text(verb))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isThirdPerson(String word) {
        return word.length() > SHORTEST_VERB
                && word.endsWith("s")
                && !word.endsWith("ss")
                && !NO_VERBS.contains(word)
                && !word.endsWith("'s");
    }

    /** "Aunt … puts four in", "the neighbour uses two": what one says of oneself has no such ending. */
    private boolean somebodyElseDoes(int from, int to) {
        for (int at = from + 1; at < to; at++) {
            boolean does = words.text(at).equals("does") && SHE.contains(words.text(at - 1));
            if (does || (THIRD_PERSON.contains(words.text(at)) && !THINGS.contains(words.text(at - 1)))) {
                return true;
            }
        }
        return false;
    }
}
