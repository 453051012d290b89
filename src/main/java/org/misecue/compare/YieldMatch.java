package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** A number that says how many a recipe makes, and how plainly it says so. */
final class YieldMatch {

    /**
     * How plainly: where the recipe's own word stands behind the number, or it was reckoned up
     * aloud, what else was counted is beside the point.
     */
    enum Plainness {
        COUNTED,
        MADE,
        NAMED,
        RECKONED
    }

    private static final Set<String> PIECES =
            Words.set("bit slice square bun biscuit cookie piece portion people serving loaf roll bar cake tart scone "
                    + "cracker pie teacake finger wedge helping muffin pastry ball folk guest person brownie");
    private static final Set<String> CUTTING = Words.set(
            "cut divide divided slice portion split shape cutting dividing slicing portioning splitting shaping");
    private static final Set<String> FEEDING = Set.of("feed", "feeds", "serve", "serves", "do", "does");
    private static final int ASKED_BEFORE = 25;
    private static final int INTO_REACH = 10;
    private static final int CUT_REACH = 6;
    private static final int MADE_REACH = 4;
    private static final int CUT_UP_REACH = 28;
    private static final int TOLD_BEFORE = 5;
    private static final int TOLD_BEHIND = 7;
    private static final int STORY_REACH = 6;
    private static final int NAMED_REACH = 10;
    private static final int COUNTED_BEFORE = 5;
    private static final int COUNTED_REACH = 20;
    /** "sixteen nice big bits". */
    private static final int NOUN_REACH = 3;

    private static final double FAR_OFF = 2;

    private final Hearing heard;
    private final Tally tally;

    YieldMatch(Hearing heard) {
        this.heard = heard;
        this.tally = new Tally(heard);
    }

    Optional<Plainness> plainness(SpokenQuantity said, Setting yield) {
        if (!isPlausible(said.amount(), yield)) {
            return Optional.empty();
        }
        if (tally.isPaired(said)) {
            return Optional.of(Plainness.RECKONED);
        }
        if (isStory(said) || isOr(said)) {
            return Optional.empty();
        }
        boolean own = isNamed(said, Words.content(yield.what()));
        if (!own && isOneOfTheList(said)) {
            return Optional.empty();
        }
        boolean piece = own || (isNamed(said, PIECES) && !isOfCounted(said));
        boolean made = heard.phrases.within(Kind.MAKES, said.start() - MADE_REACH, said.start());
        boolean cut = isCutInto(said.start());
        if (isOutOfIt(said) && !said.isAside()) {
            return Optional.of(Plainness.MADE);
        }
        if (isOfYours(said) || isWhatIsMade(said) || isCutUp(said) || isAllOfThem(said)) {
            return Optional.of(Plainness.MADE);
        }
        boolean told = heard.phrases.within(Kind.IN_ALL, said.start() - TOLD_BEFORE, said.start())
                || heard.phrases.within(Kind.IN_ALL, said.end(), said.end() + TOLD_BEHIND);
        boolean ofThem = heard.isOfThem(said.end());
        if ((tally.isTotal(said) && (told || made || piece || !isOfOther(said))) || isCountedUp(said)) {
            return Optional.of(Plainness.RECKONED);
        }
        if (made || cut || told || isSum(said)) {
            if (own) {
                return Optional.of(Plainness.NAMED);
            }
            if (made && (!isOfOther(said) || isGot(said))) {
                return Optional.of(Plainness.MADE);
            }
            boolean counted = piece || (ofThem && !isOfNamedBefore(said)) || cut || isSum(said);
            return counted && !(isOfOther(said) && !piece) ? Optional.of(Plainness.COUNTED) : Optional.empty();
        }
        return Optional.empty();
    }

    /** "twelve, so that's how many we're making". */
    private boolean isWhatIsMade(SpokenQuantity said) {
        return !said.isAside() && heard.phrases.within(Kind.AS_MANY_AS_MADE, said.end(), said.end() + TOLD_BEHIND);
    }

    /** "six for me and twelve of them for you". */
    private boolean isOfYours(SpokenQuantity said) {
        int end = heard.words.normal(said.end(), said.end() + 2).equals("of them") ? said.end() + 2 : said.end();
        return said.manner() == Manner.BARE
                && heard.phrases.endAt(Kind.VIEWER, end).isPresent()
                && heard.quantityBefore(said.start())
                        .filter(mine -> mine.manner() == Manner.BARE && said.start() - mine.end() <= COUNTED_BEFORE)
                        .filter(mine ->
                                heard.phrases.endAt(Kind.MINE, mine.end()).isPresent())
                        .isPresent()
                && heard.namesIn(said.start() - NAMED_REACH, end).stream().noneMatch(NameHit::inRecipe);
    }

    /** "eighteen from this also, so thirty six in all". */
    private boolean isAllOfThem(SpokenQuantity said) {
        return !said.isAside()
                && heard.words.text(said.start() - 1).equals("so")
                && heard.phrases.endAt(Kind.TOTAL_AFTER, said.end()).isPresent()
                && heard.namesIn(said.start() - NAMED_REACH, said.end() + 2).stream()
                        .noneMatch(NameHit::inRecipe);
    }

    /** "cut it in half and in half again and every one of those in three, so that's twelve". */
    private boolean isCutUp(SpokenQuantity said) {
        return !said.isAside()
                && heard.words.normal(said.start() - 3, said.start()).matches("so that (?:is|makes)")
                && heard.words.saysAny(CUTTING, said.start() - CUT_UP_REACH, said.start())
                && heard.namesIn(said.start() - CUT_UP_REACH, said.end() + 2).stream()
                        .noneMatch(NameHit::inRecipe);
    }

    /** "six each in two tins" is twelve. */
    Amount amount(SpokenQuantity said) {
        RationalNumber each = said.amount().least().orElse(Rationals.ONE);
        return tins(said).map(each::multiply).map(Amount::of).orElse(said.amount());
    }

    private Optional<RationalNumber> tins(SpokenQuantity said) {
        boolean each = heard.words.text(said.end()).equals("each")
                && Set.of("in", "on", "from").contains(heard.words.text(said.end() + 1));
        return each
                ? heard.quantityFrom(said.end())
                        .filter(next -> next.start() == said.end() + 2)
                        .flatMap(next -> next.amount().least())
                : Optional.empty();
    }

    /** "how many did we get, let me see … so sixteen". */
    private boolean isCountedUp(SpokenQuantity said) {
        return heard.phrases.within(Kind.ASKS_HOW_MANY, said.start() - ASKED_BEFORE, said.start())
                && heard.phrases.within(Kind.IN_ALL, said.start() - 2, said.start())
                && !isOfOther(said);
    }

    /** "you'll get about forty flips out of it": whatever the recogniser made of their name. */
    private boolean isGot(SpokenQuantity said) {
        return heard.phrases.within(Kind.IN_ALL, said.end(), said.end() + TOLD_BEHIND)
                && heard.namesIn(said.end(), said.end() + 2).stream().noneMatch(name -> name.inRecipe());
    }

    /** "that does eight people, or it does four of my brothers". */
    private boolean isOr(SpokenQuantity said) {
        return heard.words.normal(said.start() - 3, said.start()).matches("or (?:it|that) (?:does|feeds|serves|makes)");
    }

    private boolean isSum(SpokenQuantity said) {
        return tins(said).isPresent();
    }

    /** The number counts an ingredient or some other thing. */
    private boolean isOfOther(SpokenQuantity said) {
        boolean ingredient = heard.namesIn(said.end(), said.end() + 2).stream().anyMatch(name -> name.inRecipe());
        return ingredient || (said.isAside(Aside.Kind.COUNT) && !isNamed(said, PIECES) && !isFed(said));
    }

    /** "the bacon … so that's twelve slices", where the list has twelve slices of bacon. */
    private boolean isOfCounted(SpokenQuantity said) {
        String noun = Words.singular(heard.words.text(said.end()));
        return heard.on(Mechanism.FOR_EVERY)
                && heard.namesIn(said.start() - COUNTED_REACH, said.start()).stream()
                        .flatMap(name -> name.lines().stream())
                        .map(heard.lines::get)
                        .filter(line -> line.quantity()
                                .filter(written -> written.unit() == Unit.EACH)
                                .isPresent())
                        .anyMatch(line -> Words.content(line.ingredient()).stream()
                                .anyMatch(word -> Words.singular(word).equals(noun)));
    }

    /** "so that's three yolks", where the list counts them. */
    private boolean isOneOfTheList(SpokenQuantity said) {
        return heard.namesIn(said.end(), said.end() + 1).stream()
                .flatMap(name -> name.lines().stream())
                .flatMap(line -> heard.lines.get(line).quantity().stream())
                .anyMatch(written -> written.unit() == Unit.EACH);
    }

    /** "that'll feed six of you". */
    private boolean isFed(SpokenQuantity said) {
        return FEEDING.contains(heard.words.text(said.start() - 1))
                && heard.words.text(said.end()).equals("of");
    }

    /** "now the eggs, large ones, there are four of them": these are what was named, not what comes of it all. */
    private boolean isOfNamedBefore(SpokenQuantity said) {
        return heard.namesIn(said.start() - NAMED_REACH, said.start()).stream().anyMatch(NameHit::inRecipe);
    }

    private boolean isNamed(SpokenQuantity said, Set<String> nouns) {
        return IntStream.range(said.end(), said.end() + NOUN_REACH)
                .anyMatch(at -> nouns.contains(Words.singular(heard.words.text(at))));
    }

    private boolean isCutInto(int start) {
        int reach = heard.words.text(start - 1).equals("into") ? INTO_REACH : CUT_REACH;
        return heard.words.saysAny(CUTTING, start - reach, start);
    }

    /** "I've got fourteen out of it". */
    private boolean isOutOfIt(SpokenQuantity said) {
        return heard.words.normal(said.end(), said.end() + 3).matches("out of (it|this|that|them)");
    }

    /** Counted things are put away before anyone asks whose they were: "last time I only got ten buns". */
    private boolean isStory(SpokenQuantity said) {
        return heard.phrases.within(Kind.OTHER_TIME, said.start() - STORY_REACH, said.start())
                || heard.phrases.within(Kind.OTHER_OCCASION, said.start() - STORY_REACH, said.start())
                || heard.phrases.within(Kind.OTHER_PEOPLE, said.start() - STORY_REACH, said.start());
    }

    /** "one slice", "two biscuits" are pieces of the bake, not the number it makes. */
    private boolean isPlausible(Amount amount, Setting yield) {
        double said = value(amount);
        double written = value(yield.quantity().amount());
        boolean whole = amount.least().filter(Rationals::isWhole).isPresent();
        return whole && said > 0 && written > 0 && Math.max(said / written, written / said) <= FAR_OFF;
    }

    private static double value(Amount amount) {
        return amount.least().map(RationalNumber::doubleValue).orElse(0.0);
    }

    /** As a figure for the setting. */
    Quantity quantity(SpokenQuantity said) {
        return new Quantity(amount(said), Unit.EACH);
    }
}
