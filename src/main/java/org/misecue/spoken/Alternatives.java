package org.misecue.spoken;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.quantity.Dimension;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/** "or use three", "if you like it sharp put in twenty": what viewers could do instead. */
final class Alternatives implements Asides.AsideRule {

    private static final Set<String> TELLING = Words.set("use add put take go give try do make throw pop then");
    private static final Set<String> OBJECTS = Set.of("it", "them", "in", "for", "to");
    private static final Set<String> NEEDING = Words.set("need want you'd you'll that's it's is");
    private static final int SUGGESTED_REACH = 5;
    private static final int IF_REACH = 12;
    private static final int WOULD_REACH = 5;

    private final WordStream words;
    private final Phrases phrases;
    private final Story story;

    Alternatives(WordStream words, Phrases phrases, Story story) {
        this.words = words;
        this.phrases = phrases;
        this.story = story;
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.ALTERNATIVES;
    }

    @Override
    public Optional<Aside> of(SpokenQuantity said) {
        return isOffered(said.start()) || isWhatIWouldDo(said.start()) || isConditional(said) || isInstead(said.end())
                ? Optional.of(Aside.of(Aside.Kind.ALTERNATIVE, "an alternative for viewers"))
                : Optional.empty();
    }

    /** "or you could use three", where it is not what viewers or the speaker are said to have. */
    private boolean isOffered(int start) {
        int from = story.clauseStart(start);
        OptionalInt offer = phrases.lastWithin(Kind.ALTERNATIVE, from, start);
        return offer.isPresent()
                && !isInsteadOf(offer.getAsInt())
                && !isOfWhere(offer.getAsInt(), start)
                && !phrases.within(Kind.VIEWER, from, start)
                && !phrases.within(Kind.MINE, from, start);
    }

    /** "oil goes in instead of butter" is done, and "write instead" is no offer either. */
    private boolean isInsteadOf(int at) {
        return words.text(at).equals("instead")
                && (words.text(at + 1).equals("of") || words.text(at - 1).equals("write"));
    }

    /** "Could you use yoghurt? You could. I'd do three quarters of a cup": told of what was asked before. */
    private boolean isWhatIWouldDo(int start) {
        return phrases.within(Kind.WOULD, start - WOULD_REACH, start)
                && (phrases.within(Kind.ALTERNATIVE, start - Story.CONDITION, start)
                        || phrases.within(Kind.CONDITION, start - Story.CONDITION, start));
    }

    /** "if it has to be tinned take seventy grams". */
    private boolean isConditional(SpokenQuantity said) {
        int start = story.conditionStart(said.start());
        OptionalInt condition = phrases.lastWithin(Kind.CONDITION, start, said.start());
        if (condition.isEmpty() && isAmount(said) && (isToldTo(said.start()) || isSuggested(said.end()))) {
            condition = lastIf(Math.max(start, said.start() - IF_REACH), said.start());
        }
        return condition.isPresent()
                && !phrases.within(Kind.VIEWER, condition.getAsInt(), said.start())
                && !isOfWhatWentBefore(condition.getAsInt(), said.start())
                && !isOfWhere(condition.getAsInt(), said.start());
    }

    /** "the coarse one, if you can get it, three hundred and fifty grams": nothing else is told under this condition. */
    private boolean isOfWhatWentBefore(int condition, int start) {
        return words.normal(condition, start).matches("if you can (get|find)( hold of)? (it|them|one|some)");
    }

    /** "bicarb, if you're across the water, one teaspoon": where it is called so. */
    private boolean isOfWhere(int condition, int start) {
        return words.normal(condition, start)
                        .matches("if you(?:'re| are) (?:in|from|across|over|watching|outside)\\b.*")
                && !words.saysAny(TELLING, condition, start)
                && !words.saysAny(NEEDING, condition, start);
    }

    /** Ovens and times are told by conditions of their own. */
    private static boolean isAmount(SpokenQuantity said) {
        return said.manner() != Manner.HEAT
                && said.unit()
                        .filter(unit -> unit.dimension() == Dimension.DURATION)
                        .isEmpty();
    }

    /** "use three", "put in twenty". */
    private boolean isToldTo(int start) {
        return TELLING.contains(words.text(start - 1))
                || (TELLING.contains(words.text(start - 2)) && OBJECTS.contains(words.text(start - 1)));
    }

    /** "sixty grams of almond butter does the job". */
    private boolean isSuggested(int end) {
        return IntStream.range(end, end + SUGGESTED_REACH)
                .anyMatch(at -> phrases.endAt(Kind.SUGGESTED, at).isPresent());
    }

    private OptionalInt lastIf(int from, int to) {
        for (int at = to - 1; at >= from; at--) {
            if (words.text(at).equals("if")) {
                return OptionalInt.of(at);
            }
        }
        return OptionalInt.empty();
    }

    /** "three instead". */
    private boolean isInstead(int end) {
        return words.text(end).equals("instead")
                && phrases.endAt(Kind.ALTERNATIVE, end).isPresent();
    }
}
