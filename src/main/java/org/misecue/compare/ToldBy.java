package org.misecue.compare;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * An amount told by another one in so many words: how many times it is, then which one is meant, by what was done with it
 * or where it went: "half what you did of the sugar", "three quarters of the butter you had in the pudding", "half as much
 * for this". A bare "half of the sugar" is a portion and none of these.
 */
final class ToldBy {

    private static final RationalNumber HALF = Rationals.of(1, 2);
    private static final RationalNumber TWO = Rationals.of(2);
    private static final Map<String, RationalNumber> TIMES = Map.of(
            "half",
            HALF,
            "halve",
            HALF,
            "twice",
            TWO,
            "double",
            TWO,
            "triple",
            Rationals.of(3),
            "same",
            Rationals.ONE,
            "equal",
            Rationals.ONE,
            "identical",
            Rationals.ONE);

    private static final Set<String> MANY = Set.of("much", "many");
    private static final Set<String> LINKS = Words.set("of as what whatever the your my our that for with to");
    private static final Set<String> BEFORE_SHARE = Words.set("the exactly just only about roughly a");
    private static final Set<String> LIKENED = Set.of("as", "to", "with");
    private static final Set<String> HERE = Words.set("this here these");
    private static final int SHARE_REACH = 5;
    private static final int THAT_REACH = 6;

    private final Hearing heard;
    private final OtherPart otherPart;

    ToldBy(Hearing heard, OtherPart otherPart) {
        this.heard = heard;
        this.otherPart = otherPart;
    }

    /** How many times the other amount it is, in {@code [start, end)}. */
    private record Ratio(int end, RationalNumber factor, boolean asMuch) {}

    /** The amount that is told from the index on. */
    Optional<Pointer> at(int start) {
        if (heard.words.text(start).startsWith("what")) {
            return ofWhatever(start);
        }
        return heard.words.text(start - 1).equals("not")
                ? Optional.empty()
                : ratio(start).flatMap(ratio -> pointer(start, ratio));
    }

    /** "whatever we did for the baking powder, you take half of that". */
    private Optional<Pointer> ofWhatever(int start) {
        OtherAmount told = OtherAmount.at(start, heard);
        if (told.name().isEmpty() || !told.doing()) {
            return Optional.empty();
        }
        for (int at = told.end(); at < told.end() + THAT_REACH; at++) {
            Optional<Ratio> ratio = ratio(at);
            int that = ratio.map(Ratio::end)
                    .map(end -> heard.words.text(end).equals("of") ? end + 1 : end)
                    .orElse(at);
            if (ratio.isPresent() && PointerGrammar.POINTING.contains(heard.words.text(that))) {
                return Optional.of(
                        new Pointer(start, that + 1, ratio.get().factor(), told.name(), Optional.empty(), false));
            }
        }
        return Optional.empty();
    }

    private Optional<Ratio> ratio(int start) {
        Optional<SpokenQuantity> number = heard.quantitiesIn(start, start + 1).stream()
                .filter(said -> said.start() == start)
                .filter(said -> said.manner() == Manner.SHARE
                        || heard.words.text(said.end()).equals("times"))
                .findFirst();
        if (number.isPresent()) {
            int end = number.get().manner() == Manner.SHARE
                    ? number.get().end()
                    : number.get().end() + 1;
            return number.get().amount().least().map(factor -> asMuch(end, factor));
        }
        if (isAsMuch(start)) {
            return Optional.of(new Ratio(start + 2, Rationals.ONE, true));
        }
        RationalNumber factor = TIMES.get(heard.words.text(start));
        return factor == null || heard.quantitiesIn(start, start + 1).stream().anyMatch(said -> said.end() > start + 1)
                ? Optional.empty()
                : Optional.of(asMuch(start + 1, factor));
    }

    private boolean isAsMuch(int at) {
        return heard.words.text(at).equals("as") && MANY.contains(heard.words.text(at + 1));
    }

    private Ratio asMuch(int end, RationalNumber factor) {
        if (isAsMuch(end)) {
            return new Ratio(end + 2, factor, true);
        }
        int measured = heard.words.text(end).equals("the") ? end + 1 : end;
        return OtherAmount.MEASURES.contains(heard.words.text(measured))
                ? new Ratio(measured + 1, factor, true)
                : new Ratio(end, factor, false);
    }

    private Optional<Pointer> pointer(int start, Ratio ratio) {
        OtherAmount told = OtherAmount.at(ratio.end(), heard);
        if (!LINKS.contains(heard.words.text(ratio.end())) && !(ratio.asMuch() && told.doing())) {
            return Optional.empty();
        }
        if (told.name().isPresent()) {
            return ofNamed(start, ratio, told, told.name().get());
        }
        boolean here = ratio.asMuch()
                && heard.words.text(ratio.end()).equals("for")
                && HERE.contains(heard.words.text(ratio.end() + 1));
        boolean elsewhere = told.part().isPresent() && (told.doing() || ratio.asMuch());
        return here || elsewhere || (told.earlier() && told.doing())
                ? otherPart.topic(start).flatMap(topic -> ofSameElsewhere(start, ratio, told, topic))
                : Optional.empty();
    }

    private Optional<Pointer> ofNamed(int start, Ratio ratio, OtherAmount told, NameHit name) {
        boolean likened = ratio.asMuch() && LIKENED.contains(heard.words.text(ratio.end()));
        boolean that = PointerGrammar.POINTING.contains(heard.words.text(name.start() - 1));
        boolean reckoned = told.part().isPresent() || likened || isReckoned(start);
        if (!told.doing() && (that || !reckoned)) {
            return Optional.empty();
        }
        Set<Integer> lines = told.part().map(part -> in(part, name.lines())).orElse(name.lines());
        Set<Integer> base = lines.isEmpty() ? name.lines() : lines;
        Optional<NameHit> same = otherPart
                .topic(start)
                .filter(topic -> topic.lines().containsAll(base) || name.lines().equals(topic.lines()))
                .map(topic -> without(base, heard.alike(topic)))
                .filter(target -> !target.lines().isEmpty());
        return Optional.of(
                new Pointer(start, told.end(), ratio.factor(), Optional.of(name.meaning(base)), same, false));
    }

    /** "it's the half of the flour", "the butter is two thirds of it". */
    private boolean isReckoned(int start) {
        int at = start - 1;
        while (at > start - SHARE_REACH && BEFORE_SHARE.contains(heard.words.text(at))) {
            at--;
        }
        return OtherAmount.BEING.contains(heard.words.text(at));
    }

    private static NameHit without(Set<Integer> lines, NameHit name) {
        Set<Integer> others = new HashSet<>(name.lines());
        others.removeAll(lines);
        return name.meaning(Set.copyOf(others));
    }

    /** "half as much for this", "the same as last time": the same ingredient in another part. */
    private Optional<Pointer> ofSameElsewhere(int start, Ratio ratio, OtherAmount told, NameHit topic) {
        if (told.part().isPresent()) {
            return otherPart.pointer(
                    start, told.end(), ratio.factor(), topic, told.part().get());
        }
        // Which of its lines the amount comes from and which gets it is told by what was measured.
        Optional<NameHit> alike = Optional.of(heard.alike(topic))
                .filter(several -> several.lines().size() > 1);
        return alike.map(several -> new Pointer(start, told.end(), ratio.factor(), alike, alike, false));
    }

    private Set<Integer> in(int part, Set<Integer> lines) {
        Set<Integer> in = new HashSet<>(lines);
        in.removeIf(line -> heard.componentOfLine.get(line) != part);
        return Set.copyOf(in);
    }
}
