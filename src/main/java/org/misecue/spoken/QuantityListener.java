package org.misecue.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Phrases.Kind;
import tech.units.indriya.function.RationalNumber;

/** Finds every quantity in the stream, hedged as the speaker hedges it, asides marked with their reason. */
public final class QuantityListener {

    /** "a vanilla cream" is no vanilla pod. */
    private static final Set<String> MADE_OF_IT =
            Words.set("cream cake sponge glaze syrup tart pie loaf bun biscuit crumble");

    private static final RationalNumber MOST_COUNTED = Rationals.of(10);
    private static final int LONGEST_HEDGE = 4;
    private static final Set<String> POINTING = Set.of("them", "that", "those", "it", "these");

    private static final Set<String> DETERMINERS = Set.of("the", "your", "my", "our", "that", "this");
    private static final Set<String> BEFORE_PRONOUN =
            Words.set("this that which other every each no last first next good nice big small wrong right old new "
                    + "second any what whole same long little number day speed full half wee");

    private static final Set<String> SORTS =
            Words.set("square round big small large little deep shallow long loose flat");
    private static final Set<String> BEFORE_SORT = Set.of("a", "the", "my", "this", "nice", "your");
    private static final Set<String> BEFORE_POINTED = Set.of("for", "in", "of", "on", "with", "into", "to", "at");

    private static final Set<String> SPOILT = Words.set("cracked broken gone off bad rotten missing mine empty burnt");
    private static final Set<String> BEFORE_THE_ONE = Set.of("just", "only", "makes", "make");

    private static final Set<String> BEFORE_COUNT = Words.set(
            "roughly about just only is need want and then so but use take not had got put add crack for in with");

    private static final Set<String> COUNTING_LINKS = Set.of("and", "that", "there", "is", "then");
    private static final Set<String> LIKENING = Set.of("like", "than", "as", "not", "without");
    private static final Set<String> PLACING = Set.of("in", "into", "on");
    private static final Set<String> LOOSE = Words.set("odd something ish heaped heaping rounded scant generous hefty");

    private final WordStream words;
    private final Set<Integer> counted;
    private final OwnMeasures own;
    private final QuantityGrammar grammar;
    private final Phrases phrases;
    private final Asides asides;
    private final Shades shades;
    private final Places<NameHit> names;

    /** For a stream whose names nobody has looked for. */
    public QuantityListener(WordStream words) {
        this(words, List.of(), Set.of());
    }

    /**
     * Knowing the names, a number that counts something else is told from one that counts an ingredient.
     *
     * @param counted the lines of the recipe that are counted, so that "an egg" is one
     */
    public QuantityListener(WordStream words, List<NameHit> names, Set<Integer> counted) {
        this.words = words;
        this.names = Places.ofNames(names);
        this.counted = Set.copyOf(counted);
        this.own = OwnMeasures.in(words);
        this.grammar = new QuantityGrammar(words, own);
        this.phrases = new Phrases(words);
        this.shades = new Shades(words);
        this.asides = new Asides(words, phrases, names);
    }

    /** In the order of the stream; none overlap. */
    public List<SpokenQuantity> all() {
        return listen(words.on(Mechanism.ASIDES));
    }

    /** The same, asides not told from the others: a price is an amount of pounds. */
    public List<SpokenQuantity> allNumbers() {
        return listen(false);
    }

    private List<SpokenQuantity> listen(boolean forAsides) {
        List<SpokenQuantity> all = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<SpokenQuantity> found = grammar.at(at).or(one(at));
            if (found.isEmpty() || isPronoun(found.get()) || isPointedAtBeforeNumber(at)) {
                at++;
                continue;
            }
            SpokenQuantity said = words.on(Mechanism.HEDGES) ? hedged(found.get()) : found.get();
            if (forAsides) {
                all.add(asideOf(said, all).map(said::asideBecause).orElse(said));
                at = asides.end(said);
            } else {
                all.add(said);
                at = said.end();
            }
        }
        return forAsides ? CountedUnits.in(words, all) : List.copyOf(all);
    }

    /** "an egg", "the zest of a lemon": one of what is counted. */
    private Supplier<Optional<SpokenQuantity>> one(int at) {
        return () -> names.at(at + 1)
                .filter(name -> words.on(Mechanism.ONE_BY_ARTICLE))
                .filter(name -> words.text(at).equals("a") || words.text(at).equals("an"))
                .filter(name -> !LIKENING.contains(words.text(at - 1))
                        && !words.text(at - 2).equals("size"))
                .filter(name -> name.inRecipe()
                        && counted.containsAll(name.lines())
                        && !MADE_OF_IT.contains(words.text(name.end())))
                .filter(name -> words.text(name.end() - 1).equals(Words.singular(words.text(name.end() - 1))))
                .map(name -> SpokenQuantity.of(at, at + 1, Amount.of(1), SpokenQuantity.Manner.BARE));
    }

    /** "one, two, three. Three bananas": what was counted. */
    private boolean isCountedOut(SpokenQuantity said, List<SpokenQuantity> before) {
        return !before.isEmpty()
                && said.amount()
                        .most()
                        .equals(before.get(before.size() - 1).amount().most())
                && words.wall(said.start())
                && names.at(said.end()).filter(NameHit::inRecipe).isPresent();
    }

    /** "one, two, three": each number one more than the one right before it. */
    private boolean isCounting(SpokenQuantity said, List<SpokenQuantity> before) {
        if (said.manner() != SpokenQuantity.Manner.BARE) {
            return false;
        }
        RationalNumber value = said.amount().least().orElse(Rationals.ZERO);
        if (value.compareTo(MOST_COUNTED) > 0) {
            return false;
        }
        if (value.equals(Rationals.of(2)) && words.text(said.start() - 1).equals("one")) {
            return true;
        }
        boolean onFromLast = !before.isEmpty()
                && afterLinks(before.get(before.size() - 1).end()) == said.start()
                && isOneMore(before.get(before.size() - 1), value);
        return onFromLast
                || grammar.at(afterLinks(said.end()))
                        .filter(next -> next.manner() == SpokenQuantity.Manner.BARE)
                        .flatMap(next -> next.amount().least())
                        .equals(Optional.of(value.add(Rationals.ONE)));
    }

    /** "two, and three", "that's two, there's three". */
    private int afterLinks(int end) {
        int at = end;
        while (at - end < 3 && COUNTING_LINKS.contains(words.text(at))) {
            at++;
        }
        return at;
    }

    private static boolean isOneMore(SpokenQuantity last, RationalNumber value) {
        return last.manner() == SpokenQuantity.Manner.BARE
                && (last.amount().least().equals(Optional.of(value.subtract(Rationals.ONE)))
                        || (last.isAside(Aside.Kind.COUNT) && last.isBelow(value)));
    }

    /** "six and nine": the second age of a list is one too. */
    private Optional<Aside> asideOf(SpokenQuantity said, List<SpokenQuantity> before) {
        if (own.isTold(said)) {
            return Optional.of(Aside.of(Aside.Kind.CAPACITY, "what something holds"));
        }
        if (words.on(Mechanism.COUNTING_ALOUD) && isCounting(said, before) && !isCountedOut(said, before)) {
            return Optional.of(Aside.of(Aside.Kind.COUNT, "counting aloud"));
        }
        if (!before.isEmpty()) {
            SpokenQuantity last = before.get(before.size() - 1);
            boolean listed = last.isAside(Aside.Kind.AGE)
                    && said.manner() == SpokenQuantity.Manner.BARE
                    && said.start() == last.end() + 1
                    && words.text(last.end()).equals("and");
            if (listed) {
                return last.aside();
            }
        }
        return asides.reason(said);
    }

    /** "this one", "the light one", "one of those": no count. */
    private boolean isPronoun(SpokenQuantity said) {
        if (said.manner() != SpokenQuantity.Manner.BARE
                || said.end() != said.start() + 1
                || !words.text(said.start()).equals("one")
                || !words.on(Mechanism.ONE_AS_PRONOUN)) {
            return false;
        }
        String before = words.text(said.start() - 1);
        String next = words.text(said.end());
        boolean spoilt = next.equals("is") && SPOILT.contains(words.text(said.end() + 1));
        if (spoilt
                || next.equals("by")
                || next.equals("at")
                || next.equals("side")
                || isPointedAt(before, said.start())) {
            return true;
        }
        boolean goesOn = before.equals("and") && next.equals("of") && named(said.end() + 1);
        boolean more = next.equals("more") && named(said.end() + 1);
        if (whose(said.end()) || named(said.end()) || goesOn || more) {
            return false;
        }
        if (before.equals("the")) {
            String first = words.text(said.start() - 2);
            return !BEFORE_THE_ONE.contains(first);
        }
        return next.equals("of") || (!BEFORE_COUNT.contains(before) && !words.border(said.start()));
    }

    /** "this one", in one sentence: "fifty of that. One egg" counts. */
    private boolean isPointedAt(String before, int start) {
        return BEFORE_PRONOUN.contains(before) && !words.wall(start);
    }

    /** "I need fingers for this one, eighty five grams": no hundred and eighty five. */
    private boolean isPointedAtBeforeNumber(int at) {
        return words.on(Mechanism.ONE_AS_PRONOUN)
                && words.text(at).equals("one")
                && (isPointing(at - 1) || isOfASort(at - 1))
                && !words.wall(at)
                && grammar.at(at + 1).isPresent();
    }

    private boolean isPointing(int at) {
        return (words.text(at).equals("this") || words.text(at).equals("that"))
                && BEFORE_POINTED.contains(words.text(at - 1));
    }

    /** "a square one, twenty two centimetres". */
    private boolean isOfASort(int at) {
        return SORTS.contains(words.text(at)) && BEFORE_SORT.contains(words.text(at - 1));
    }

    /** "two eggs, one in yours". */
    private boolean whose(int at) {
        return phrases.endAt(Kind.VIEWER, at).isPresent()
                || phrases.endAt(Kind.MINE, at).isPresent();
    }

    private boolean named(int at) {
        return names.at(at).filter(NameHit::inRecipe).isPresent() && !words.border(at);
    }

    private boolean isHedgedBehind(int at) {
        OptionalInt end = phrases.endAt(Kind.HEDGE_AFTER, at);
        boolean plain = end.isPresent()
                && (isGiveOrTake(at) || grammar.at(end.getAsInt()).isEmpty());
        return plain || (words.on(Mechanism.SHADES) && shades.behind(at));
    }

    /** "seventy five grams, give or take five". */
    private boolean isGiveOrTake(int at) {
        return words.normal(at, at + 3).equals("give or take");
    }

    /** Behind what is measured: "thirty grams of them, give or take". */
    private int afterThing(int end) {
        int at = words.text(end).equals("of") ? end + 1 : end;
        if (at > end && POINTING.contains(words.text(at))) {
            return at + 1;
        }
        int thing = DETERMINERS.contains(words.text(at)) ? at + 1 : at;
        return afterHere(names.at(thing).map(NameHit::end).orElse(end));
    }

    /** "a cup of sour cream here, give or take", "two hundred mils in the jug, give or take". */
    private int afterHere(int end) {
        boolean placed = PLACING.contains(words.text(end)) && DETERMINERS.contains(words.text(end + 1));
        return placed
                ? end + 3
                : words.text(end).equals("here") || words.text(end).equals("there") ? end + 1 : end;
    }

    /** "thirty odd grams", "a heaped teaspoon": a word inside the amount that makes it a loose one. */
    private Optional<String> looseWord(SpokenQuantity said) {
        for (int at = said.start(); at < said.end(); at++) {
            if (LOOSE.contains(words.text(at))) {
                return Optional.of(words.text(at));
            }
        }
        boolean before = LOOSE.contains(words.text(said.start() - 1));
        return before ? Optional.of(words.text(said.start() - 1)) : Optional.empty();
    }

    /** The whole phrase that ends there: "not quite", "call it". */
    private String hedgeBefore(int end) {
        int from = end - 1;
        for (int at = Math.max(0, end - LONGEST_HEDGE); at < from; at++) {
            if (phrases.endAt(Kind.HEDGE_BEFORE, at).equals(OptionalInt.of(end))) {
                from = at;
            }
        }
        return words.normal(from, end);
    }

    /** "here you call it": what it is called, not how much it is about. */
    private boolean isNaming(int start) {
        return words.normal(start - 3, start).matches("(you|we|they|i) call it");
    }

    /** "I turn it around, a hundred and twenty five". */
    private boolean isTurnedAround(int start) {
        return words.text(start - 1).equals("around")
                && (words.text(start - 2).startsWith("turn")
                        || words.text(start - 3).startsWith("turn"));
    }

    private SpokenQuantity hedged(SpokenQuantity said) {
        if (phrases.endsBefore(Kind.HEDGE_BEFORE, said.start())
                && !isNaming(said.start())
                && !isTurnedAround(said.start())) {
            return said.with(new Amount.Approximate(said.amount(), hedgeBefore(said.start())));
        }
        OptionalInt shade = words.on(Mechanism.SHADES) ? shades.before(said.start()) : OptionalInt.empty();
        if (shade.isPresent()) {
            return said.with(new Amount.Approximate(said.amount(), words.normal(shade.getAsInt(), said.start())));
        }
        Optional<String> loose = looseWord(said);
        if (loose.isPresent()) {
            return said.with(new Amount.Approximate(said.amount(), loose.get()));
        }
        if (isHedgedBehind(said.end()) || isHedgedBehind(afterThing(said.end()))) {
            return said.with(new Amount.Approximate(said.amount(), words.normal(said.end(), said.end() + 1)));
        }
        return said;
    }
}
