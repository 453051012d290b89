package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Reads words that point at an amount instead of saying it. */
final class PointerGrammar {

    private static final RationalNumber HALF = Rationals.of(1, 2);

    /** What the phrase makes of the other amount. Those in "of the" are followed by the other ingredient. */
    private static final Map<String, RationalNumber> PHRASES = Map.ofEntries(
            Map.entry("the same again", Rationals.ONE),
            Map.entry("same again", Rationals.ONE),
            Map.entry("the same amount", Rationals.ONE),
            Map.entry("same amount", Rationals.ONE),
            Map.entry("the same weight", Rationals.ONE),
            Map.entry("same weight", Rationals.ONE),
            Map.entry("the same quantity", Rationals.ONE),
            Map.entry("same quantity", Rationals.ONE),
            Map.entry("exactly the same", Rationals.ONE),
            Map.entry("the same of", Rationals.ONE),
            Map.entry("same of", Rationals.ONE),
            Map.entry("the very same", Rationals.ONE),
            Map.entry("an equal amount", Rationals.ONE),
            Map.entry("equal amount", Rationals.ONE),
            Map.entry("an equal weight", Rationals.ONE),
            Map.entry("equal weight", Rationals.ONE),
            Map.entry("equal quantity", Rationals.ONE),
            Map.entry("equal measure", Rationals.ONE),
            Map.entry("the same measure", Rationals.ONE),
            Map.entry("same measure", Rationals.ONE),
            Map.entry("same weight again", Rationals.ONE),
            Map.entry("same amount again", Rationals.ONE),
            Map.entry("same quantity again", Rationals.ONE),
            Map.entry("the same weight again", Rationals.ONE),
            Map.entry("the same amount again", Rationals.ONE),
            Map.entry("the same quantity again", Rationals.ONE),
            Map.entry("equal to that", Rationals.ONE),
            Map.entry("as much", Rationals.ONE),
            Map.entry("twice that", Rationals.of(2)),
            Map.entry("double that", Rationals.of(2)),
            Map.entry("twice as much", Rationals.of(2)),
            Map.entry("double the amount", Rationals.of(2)),
            Map.entry("double the weight", Rationals.of(2)),
            Map.entry("twice the amount", Rationals.of(2)),
            Map.entry("twice the weight", Rationals.of(2)),
            Map.entry("double that amount", Rationals.of(2)),
            Map.entry("double that quantity", Rationals.of(2)),
            Map.entry("twice that amount", Rationals.of(2)),
            Map.entry("half that weight", HALF),
            Map.entry("twice that weight", Rationals.of(2)),
            Map.entry("double that weight", Rationals.of(2)),
            Map.entry("half that amount", HALF),
            Map.entry("half that quantity", HALF),
            Map.entry("double the quantity", Rationals.of(2)),
            Map.entry("half the quantity", HALF),
            Map.entry("half what the", HALF),
            Map.entry("half of what the", HALF),
            Map.entry("twice the", Rationals.of(2)),
            Map.entry("double the", Rationals.of(2)),
            Map.entry("as much as", Rationals.ONE),
            Map.entry("half what", HALF),
            Map.entry("half of what", HALF),
            Map.entry("same as what", Rationals.ONE),
            Map.entry("twice what", Rationals.of(2)),
            Map.entry("double what", Rationals.of(2)),
            Map.entry("matches the", Rationals.ONE),
            Map.entry("matches that", Rationals.ONE),
            Map.entry("matches it", Rationals.ONE),
            Map.entry("same as what the", Rationals.ONE),
            Map.entry("the same as the", Rationals.ONE),
            Map.entry("twice what the", Rationals.of(2)),
            Map.entry("double what the", Rationals.of(2)),
            Map.entry("same number as the", Rationals.ONE),
            Map.entry("same as the", Rationals.ONE),
            Map.entry("half that", HALF),
            Map.entry("half as much", HALF),
            Map.entry("half the amount", HALF),
            Map.entry("half the weight", HALF));

    /** These name the other one behind "with", "to" or "as", if at all. */
    private static final Set<String> ALIKE = Set.of(
            "weight for weight",
            "gram for gram",
            "ounce for ounce",
            "spoon for spoon",
            "cup for cup",
            "one to one",
            "one for one");

    private static final Set<String> FIRST_WORDS = Stream.concat(
                    Stream.concat(PHRASES.keySet().stream(), ALIKE.stream())
                            .map(phrase -> phrase.substring(0, phrase.indexOf(' '))),
                    Stream.of("whatever", "what", "likewise", "ditto"))
            .collect(Collectors.toUnmodifiableSet());

    /** These mean nothing where no other ingredient is named behind them. */
    private static final Set<String> ONLY_OF_NAMED = Set.of(
            "twice the",
            "double the",
            "twice what",
            "double what",
            "half what",
            "half of what",
            "same as what",
            "as much as");

    private static final Set<String> WITH = Set.of("with", "to", "as");

    private static final Set<String> LIKEWISE = Set.of("likewise", "ditto");
    private static final int NAME_LENGTH = 5;
    private static final int LONGEST = 4;
    private static final int ALIKE_LENGTH = 3;
    static final Set<String> POINTING = Set.of("that", "it", "this", "those", "them", "these");

    /** Behind these the other ingredient may be named at once: "as much sugar", "same quantity warm water". */
    private static final Set<String> MEASURES = Set.of("much", "amount", "quantity", "weight", "measure", "again");

    static final Set<String> DETERMINERS = Set.of("the", "your", "my", "our");
    private static final Set<String> TO_TARGET = Set.of("of", "in", "is", "are");
    private static final Set<String> SKIPPED = Words.set(
            "the my your our of is are amount weight that this in and a we you had it as for only just quantity "
                    + "used got put took was there have has");
    private static final Set<String> RECKONS = Set.of("is", "are", "at", "be", "was", "about", "weighs");
    private static final Set<String> WEIGH = Set.of("weigh", "weighs", "weighed", "come", "came");

    private final Hearing heard;
    private final OtherPart otherPart;
    private final ToldBy toldBy;

    PointerGrammar(Hearing heard) {
        this.heard = heard;
        this.otherPart = new OtherPart(heard);
        this.toldBy = new ToldBy(heard, otherPart);
    }

    /** The pointer that begins at the index, if one does. */
    Optional<Pointer> at(int start) {
        Optional<Pointer> phrase = byPhrase(start);
        Optional<Pointer> told = toldBy.at(start);
        return phrase.filter(found -> found.base().isPresent() || found.target().isPresent())
                .filter(found -> told.filter(longer ->
                                longer.end() > found.end() && found.target().isEmpty())
                        .isEmpty())
                .or(() -> told)
                .or(() -> phrase);
    }

    private Optional<Pointer> byPhrase(int start) {
        Optional<Pointer> times = times(start);
        if (times.isPresent() || !FIRST_WORDS.contains(heard.words.text(start))) {
            return times;
        }
        boolean negated = heard.words.text(start - 1).equals("not");
        if (!negated && ALIKE.contains(heard.words.normal(start, start + ALIKE_LENGTH))) {
            return alike(start);
        }
        for (int length = LONGEST; length >= 2; length--) {
            if (start + length > heard.words.size()) {
                continue;
            }
            RationalNumber factor = PHRASES.get(phrase(start, start + length));
            if (factor != null && !negated && !(isExact(start) && at(start + 1).isPresent())) {
                Pointer found = complete(start, start + length, factor);
                return isNothing(found, start, start + length) ? Optional.empty() : Optional.of(found);
            }
        }
        return likewise(start).or(() -> asTheyWeigh(start)).or(() -> asMany(start));
    }

    /** "the same as my mother bought", "double the recipe": nothing that is measured. */
    private boolean isNothing(Pointer found, int start, int end) {
        boolean bare = ONLY_OF_NAMED.contains(heard.words.normal(start, end));
        return found.base().isEmpty() && (isOwned(end - 1) || bare);
    }

    /** "two and a half times the butter", "four times what we had of the cocoa": as "twice", with another number. */
    private Optional<Pointer> times(int start) {
        Optional<SpokenQuantity> number = heard.quantitiesIn(start, start + 1).stream()
                .filter(said -> heard.words.text(said.end()).equals("times"))
                .findFirst();
        Optional<RationalNumber> factor = number.flatMap(said -> said.amount().least());
        if (factor.isEmpty()) {
            return Optional.empty();
        }
        int rest = number.get().end() + 1;
        for (int length = LONGEST - 1; length >= 1; length--) {
            String words = "twice " + phrase(rest, rest + length);
            boolean the = ONLY_OF_NAMED.contains(words);
            if (PHRASES.containsKey(words) && !(the && !RECKONS.contains(heard.words.text(start - 1)))) {
                Pointer found = complete(start, rest + length, factor.get());
                return found.base().isEmpty() && the ? Optional.empty() : Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** "brown sugar likewise", "sugar the same", right behind the name. */
    private Optional<Pointer> likewise(int start) {
        int end = LIKEWISE.contains(heard.words.text(start)) ? start + 1 : start + 2;
        boolean same = end == start + 1 || heard.words.normal(start, end).equals("the same");
        boolean named = heard.namesIn(start - NAME_LENGTH, start).stream()
                .anyMatch(name -> name.inRecipe() && name.end() == start && !heard.isPassing(name));
        boolean alone = end == start + 1
                || heard.words.border(end)
                || heard.words.text(end).equals("and");
        return same && named && alone && !heard.words.wall(start)
                ? Optional.of(new Pointer(start, end, Rationals.ONE, Optional.empty(), Optional.empty(), false))
                : Optional.empty();
    }

    /** Whose it is makes no difference: "the same as your flour". */
    private String phrase(int start, int end) {
        String phrase = heard.words.normal(start, end);
        int last = phrase.lastIndexOf(' ') + 1;
        return DETERMINERS.contains(phrase.substring(last)) ? phrase.substring(0, last) + "the" : phrase;
    }

    /** "the same as my mother bought" points at nothing, "the same as the last" may. */
    private boolean isOwned(int determiner) {
        String word = heard.words.text(determiner);
        return DETERMINERS.contains(word) && !word.equals("the");
    }

    /** "exactly the same weight of water" is read from its second word on. */
    private boolean isExact(int start) {
        return heard.words.text(start).equals("exactly");
    }

    /** "whatever the eggs weigh". */
    private Optional<Pointer> asTheyWeigh(int start) {
        String word = heard.words.text(start);
        if (!word.equals("whatever") && !word.equals("what")) {
            return Optional.empty();
        }
        return heard.namesIn(start + 1, start + 4).stream()
                .filter(name -> name.inRecipe() && WEIGH.contains(heard.words.text(name.end())))
                .findFirst()
                .map(name ->
                        new Pointer(start, name.end() + 1, Rationals.ONE, Optional.of(name), Optional.empty(), false));
    }

    /** "it's the same number of scoops as the water was". */
    private Optional<Pointer> asMany(int start) {
        int as = start + 4;
        boolean same = heard.words.normal(start, start + 3).equals("same number of")
                && heard.words.text(as).equals("as");
        return (same ? nameAt(as + 1, 3) : Optional.<NameHit>empty())
                .map(base -> ofBase(start, base.end(), Rationals.ONE, Optional.of(base)));
    }

    private Pointer complete(int start, int end, RationalNumber factor) {
        if (heard.words.text(end - 1).equals("what")
                || heard.words.normal(start, end).equals("as much as")) {
            return otherPart.went(start, end, factor).orElseGet(() -> ofBase(start, end, factor, nameAt(end, 6)));
        }
        if (DETERMINERS.contains(heard.words.text(end - 1))) {
            return otherPart.of(start, end, factor).orElseGet(() -> ofBase(start, end, factor, nameAt(end, 1)));
        }
        // "two times that butter" names the other one; "half that sugar" may be a portion of it.
        Optional<NameHit> that = heard.words.text(end - 1).equals("that") && factor.compareTo(Rationals.ONE) > 0
                ? nameAt(end, 0)
                : Optional.empty();
        if (that.isPresent()) {
            return ofBase(start, end, factor, that);
        }
        // "twice the weight of the butter" names the other one, "twice the amount of sugar" the one that gets it.
        boolean measure = !factor.equals(Rationals.ONE)
                && !heard.words.text(start + 1).equals("that")
                && !POINTING.contains(heard.words.text(end - 1))
                && heard.words.text(end).equals("of")
                && heard.words.text(end + 1).equals("the");
        if (measure) {
            return ofBase(start, end, factor, nameAt(end + 1, 3));
        }
        int of = heard.words.text(end - 1).equals("of") ? end - 1 : end;
        if (heard.words.text(of).equals("of") && POINTING.contains(heard.words.text(of + 1))) {
            // "half as much of that as you had treacle"
            int as = of + 2;
            Optional<NameHit> other = heard.words.text(as).equals("as") ? nameAt(as + 1, 3) : Optional.empty();
            return ofBase(start, end, factor, other);
        }
        Optional<NameHit> target = TO_TARGET.contains(heard.words.text(of))
                ? nameAt(of + 1, 3)
                : MEASURES.contains(heard.words.text(end - 1)) ? nameAt(end, 1) : Optional.empty();
        int after = target.map(NameHit::end).orElse(end);
        Optional<NameHit> base = heard.words.text(after).equals("as") ? nameAt(after + 1, 3) : Optional.empty();
        return new Pointer(start, base.map(NameHit::end).orElse(after), factor, base, target, false);
    }

    /** "weight for weight with the flour", "one to one with that"; nothing where the other one is not told. */
    private Optional<Pointer> alike(int start) {
        int end = start + ALIKE_LENGTH;
        boolean with = WITH.contains(heard.words.text(end));
        boolean that = with && POINTING.contains(heard.words.text(end + 1));
        Optional<NameHit> base = with ? nameAt(end + 1, 2) : Optional.empty();
        return base.isPresent() || that ? Optional.of(ofBase(start, end + 2, Rationals.ONE, base)) : Optional.empty();
    }

    /** What points at a named amount, or at the last one where none is named, and does not say what gets it. */
    private static Pointer ofBase(int start, int end, RationalNumber factor, Optional<NameHit> base) {
        return new Pointer(start, base.map(NameHit::end).orElse(end), factor, base, Optional.empty(), false);
    }

    /** A share or percentage as a pointer: "two thirds of that", "two percent of the flour", "40 % cornflour". */
    Optional<Pointer> of(SpokenQuantity said) {
        Optional<RationalNumber> factor = said.amount().least();
        if (factor.isEmpty()) {
            return Optional.empty();
        }
        int end = said.end();
        boolean of = heard.words.text(end).equals("of") || heard.words.text(end).equals("on");
        if (of && POINTING.contains(heard.words.text(end + 1))) {
            int after = afterPointing(end + 2);
            Optional<NameHit> target =
                    TO_TARGET.contains(heard.words.text(after)) ? nameAt(after + 1, 3) : Optional.empty();
            return Optional.of(new Pointer(said.start(), after, factor.get(), Optional.empty(), target, true));
        }
        Optional<NameHit> base = of ? nameAt(end + 1, 5) : Optional.empty();
        if (base.isPresent() && (said.manner() == Manner.PERCENT || isReckoned(said, end))) {
            Optional<NameHit> target =
                    goesInto(base.get()).or(() -> afterIn(base.get().end()));
            int after = target.map(name -> Math.max(name.end(), base.get().end()))
                    .orElse(base.get().end());
            return Optional.of(new Pointer(said.start(), after, factor.get(), base, target, true));
        }
        Optional<NameHit> target = said.manner() == Manner.PERCENT ? nameAt(end, 2) : Optional.empty();
        return target.map(
                name -> new Pointer(said.start(), name.end(), factor.get(), Optional.empty(), Optional.of(name), true));
    }

    /** "five percent of the flour goes in the paste": then it is that part's own flour. */
    private Optional<NameHit> goesInto(NameHit base) {
        boolean goes = heard.words.text(base.end()).equals("goes")
                && heard.words.text(base.end() + 1).startsWith("in");
        OptionalInt component = goes ? heard.locators.around(base.end(), base.end() + 1) : OptionalInt.empty();
        if (component.isEmpty()) {
            return Optional.empty();
        }
        Set<Integer> lines = base.lines().stream()
                .filter(line -> heard.componentOfLine.get(line) == component.getAsInt())
                .collect(Collectors.toSet());
        return lines.isEmpty() || lines.equals(base.lines()) ? Optional.empty() : Optional.of(base.meaning(lines));
    }

    /** "the sugar is a third of the water", not "pour on a third of the milk". */
    private boolean isReckoned(SpokenQuantity said, int end) {
        boolean weight = heard.words.normal(end, end + 4).contains("weight");
        return weight || RECKONS.contains(heard.words.text(said.start() - 1));
    }

    /** "a third of the weight of the water, there, in caster sugar". */
    private Optional<NameHit> afterIn(int from) {
        for (int at = from; at < from + 3; at++) {
            if (heard.words.text(at).equals("in") || heard.words.text(at).equals("of")) {
                return nameAt(at + 1, 1);
            }
        }
        return Optional.empty();
    }

    private int afterPointing(int at) {
        String word = heard.words.text(at);
        return word.equals("amount") || word.equals("weight") || word.equals("again") ? at + 1 : at;
    }

    /** The recipe's name that begins within some words of the index, only small words before it. */
    private Optional<NameHit> nameAt(int from, int reach) {
        List<NameHit> near = heard.namesIn(from, from + reach + 1);
        return near.stream()
                .filter(NameHit::inRecipe)
                .min(Comparator.comparingInt(NameHit::start))
                .filter(name -> onlySmall(from, name.start()));
    }

    private boolean onlySmall(int from, int to) {
        for (int at = from; at < to; at++) {
            if (!SKIPPED.contains(heard.words.text(at)) || heard.words.border(at)) {
                return false;
            }
        }
        return true;
    }
}
