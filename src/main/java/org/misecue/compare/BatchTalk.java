package org.misecue.compare;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * "I'm making a double batch": when the speaker announces another batch than the written one, what is judged is what
 * viewers are told for the written batch, said outright ("so that's five hundred for you") or by the announced factor.
 */
final class BatchTalk {

    private static final Set<String> SCALED = Words.set("double doubled doubling triple tripled halve halved halving");
    /** "you don't double the minutes" is said of no part. */
    private static final Set<String> HEAT_AND_TIME = Words.set("minutes time times hours oven heat temperature");

    private static final Set<String> NOT = Words.set("not don't didn't haven't isn't aren't never no");

    /** "this I do not halve … so no doubling": who says it again within so many words means the same part. */
    private static final int SAID_AGAIN = 60;

    private static final int PART_BEHIND = 15;
    private static final int LINE_REACH = 14;

    private final Hearing heard;
    private final Judge judge;
    private final RationalNumber factor;
    private final RationalNumber factorOfSettings;
    private final Map<Integer, RationalNumber> factorOfComponent = new HashMap<>();

    /**
     * @param mentions all that was said of the lines, as said
     */
    BatchTalk(Hearing heard, Map<Integer, List<Mention>> mentions) {
        this.heard = heard;
        this.judge = new Judge(heard.household);
        RationalNumber announced = heard.on(Mechanism.BATCH_TALK) ? Announcement.of(heard) : Rationals.ONE;
        Borne borne = borne(announced, mentions);
        BatchPairs pairs = new BatchPairs(heard);
        Optional<RationalNumber> paired =
                heard.on(Mechanism.BATCH_TALK) ? pairs.factor(mentions.values()) : Optional.empty();
        this.factor = paired.orElse(borne.out() ? announced : Rationals.ONE);
        this.factorOfSettings = paired.orElse(borne.against() ? Rationals.ONE : announced);
        if (!factor.equals(Rationals.ONE)) {
            for (int c = 0; c < heard.recipe.components().size(); c++) {
                int component = c;
                pairs.factor(ofComponent(c, mentions)).ifPresent(batches -> factorOfComponent.put(component, batches));
            }
            exceptions();
        }
    }

    private List<List<Mention>> ofComponent(int component, Map<Integer, List<Mention>> mentions) {
        return mentions.entrySet().stream()
                .filter(line -> heard.componentOfLine.get(line.getKey()) == component)
                .map(Map.Entry::getValue)
                .toList();
    }

    /** How many written batches are being made; 1 where nothing is announced. */
    RationalNumber factor() {
        return factor;
    }

    /**
     * Whether an announcement is borne out: it may have been about another day.
     *
     * @param scaled lines of which the announced amount is said
     * @param onlyAsWritten lines of which only the written one is
     */
    private record Borne(int scaled, int onlyAsWritten) {

        boolean out() {
            return scaled > 0 && !against();
        }

        boolean against() {
            return scaled < onlyAsWritten;
        }
    }

    private Borne borne(RationalNumber announced, Map<Integer, List<Mention>> mentions) {
        int scaled = 0;
        int onlyAsWritten = 0;
        for (Map.Entry<Integer, List<Mention>> line : mentions.entrySet()) {
            Optional<Quantity> written = heard.lines.get(line.getKey()).quantity();
            boolean isScaled = written.filter(one -> isSaid(one.times(announced), line.getValue()))
                    .isPresent();
            boolean isAsWritten =
                    written.filter(one -> isSaid(one, line.getValue())).isPresent();
            scaled += isScaled ? 1 : 0;
            onlyAsWritten += isAsWritten && !isScaled ? 1 : 0;
        }
        return new Borne(scaled, onlyAsWritten);
    }

    private boolean isSaid(Quantity written, List<Mention> mentions) {
        return mentions.stream()
                .anyMatch(mention -> judge.of(written, mention.quantity(), Optional.empty()) != Verdict.DIFFERS);
    }

    /** The same for yields and times: an announcement counts there until the amounts speak against it. */
    RationalNumber factorOfSettings() {
        return factorOfSettings;
    }

    /** "The one thing I haven't doubled": the component that is on is made in the written size. */
    private void exceptions() {
        int last = -SAID_AGAIN;
        for (int at = 0; at < heard.words.size(); at++) {
            boolean left = heard.phrases.endAt(Kind.NOT_DOUBLED, at).isPresent() || isLeftAsWritten(at);
            if (left && !isOfOneLine(at)) {
                except(at, at - last >= SAID_AGAIN);
                last = at;
            }
        }
    }

    /** "the marmalade goes in and this I do not halve, a hundred and fifty": of that alone. */
    private boolean isOfOneLine(int at) {
        boolean named =
                heard.namesIn(at - LINE_REACH, at).stream().anyMatch(name -> name.inRecipe() && !heard.isPassing(name));
        return named
                && heard.quantityFrom(at)
                        .filter(said -> said.start() - at <= LINE_REACH)
                        .filter(said -> heard.namesIn(at, said.end() + 3).isEmpty())
                        .isPresent();
    }

    private void except(int at, boolean anew) {
        OptionalInt named = heard.locators.around(at, at + PART_BEHIND);
        if (named.isPresent()) {
            factorOfComponent.put(named.getAsInt(), Rationals.ONE);
            return;
        }
        if (!anew) {
            return;
        }
        int step = heard.stepAt(Math.min(heard.words.size() - 1, at + PART_BEHIND));
        for (int c = 0; c < heard.recipe.components().size(); c++) {
            if (heard.stepIn(step, c)) {
                factorOfComponent.put(c, Rationals.ONE);
            }
        }
    }

    /** "this part I do not halve", but not "if I don't double it" nor "don't forget to double it". */
    private boolean isLeftAsWritten(int at) {
        return SCALED.contains(heard.words.text(at))
                && NOT.contains(heard.words.text(at - 1))
                && !HEAT_AND_TIME.contains(heard.words.text(at + 2))
                && !heard.words.normal(at - 4, at).matches("(.* )?(if|when|where|whenever|until|unless)( .*)?");
    }

    /** The mentions that count for the written batch, each in its size. */
    List<Mention> forViewers(List<Mention> mentions) {
        if (factor.equals(Rationals.ONE) || mentions.isEmpty()) {
            return mentions;
        }
        int component = heard.componentOfLine.get(mentions.get(0).line());
        RationalNumber batches = factorOfComponent.getOrDefault(component, factor);
        if (batches.equals(Rationals.ONE)) {
            return mentions;
        }
        List<Mention> told = mentions.stream()
                .filter(mention -> isForViewers(mention, mentions, batches))
                .toList();
        List<Mention> outright = mentions.stream()
                .filter(mention -> told.contains(mention) || isSaidAgain(mention, told))
                .toList();
        RationalNumber share = batches.reciprocal();
        return mentions.stream()
                .filter(mention -> outright.contains(mention) || !isToldOutright(mention, outright))
                .map(mention -> outright.contains(mention)
                        ? mention
                        : mention.with(mention.quantity().times(share)))
                .toList();
    }

    /** What viewers were once told they are told again without saying so. */
    private static boolean isSaidAgain(Mention mention, List<Mention> told) {
        return told.stream()
                .anyMatch(other ->
                        mention.start() > other.start() && other.quantity().equals(mention.quantity()));
    }

    /** "a hundred and fifty in mine, so you want seventy five": the first is only the way to the second. */
    private static boolean isToldOutright(Mention mention, List<Mention> outright) {
        return outright.stream().anyMatch(other -> Math.abs(other.start() - mention.start()) <= BatchPairs.PASSAGE);
    }

    /** Told so, or what an amount just before it comes to in the written batch: "fifty, so a hundred". */
    private boolean isForViewers(Mention mention, List<Mention> own, RationalNumber batches) {
        return switch (Whose.of(mention, heard)) {
            case VIEWERS -> true;
            case MINE -> false;
            case UNTOLD ->
                own.stream()
                        .filter(other -> other.start() < mention.start()
                                && mention.start() - other.start() <= BatchPairs.PASSAGE
                                && Whose.of(other, heard) != Whose.VIEWERS)
                        .anyMatch(other -> BatchPairs.ratio(other.quantity(), mention.quantity())
                                .filter(batches::equals)
                                .isPresent());
        };
    }
}
