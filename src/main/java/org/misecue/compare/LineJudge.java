package org.misecue.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.narration.Clock;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** The verdict on one ingredient line, from what the ledger says stands at the end. */
final class LineJudge {

    private static final int ONE_BREATH = 30;
    private static final int OVER_BEFORE = 30;
    private static final int OVER_BEHIND = 12;
    private static final Set<Kind> THOUGHT_OVER =
            EnumSet.of(Kind.REPAIR, Kind.LATE_REPAIR, Kind.ADDS, Kind.TOTAL_AFTER);

    private final Hearing heard;
    private final List<SpokenQuantity> homeless;
    private final Judge judge;
    private final SheetAndHand sheet;
    private final StrayNumbers strays;

    /** @param homeless the amounts that were given to nothing */
    LineJudge(Hearing heard, List<SpokenQuantity> homeless) {
        this.heard = heard;
        this.homeless = homeless;
        this.judge = new Judge(heard.household);
        this.sheet = new SheetAndHand(heard);
        this.strays = new StrayNumbers(heard);
    }

    LineVerdict of(int line, List<Mention> mentions) {
        String component =
                heard.recipe.components().get(heard.componentOfLine.get(line)).name();
        IngredientLine written = heard.lines.get(line);
        if (mentions.isEmpty()) {
            return silence(component, line, mentions);
        }
        List<Mention> counted = counted(line, strays.without(mentions));
        if (counted.isEmpty()) {
            return silence(component, line, mentions);
        }
        List<Ledger.Entry> standing = standing(line, counted);
        List<Evidence> evidence = evidence(standing);
        Grounds grounds = grounds(written, counted, standing);
        heard.trail.ruled(line, new Trail.Ruling(counted, standing, grounds));
        Confidence sure = Certainty.of(grounds);
        Ledger.Entry entry = standing.get(standing.size() - 1);
        if (standing.size() > 1 && !isLastWord(line, standing)) {
            return new LineVerdict(component, written, Verdict.DIFFERS, sure, contradiction(standing), evidence);
        }
        Verdict verdict = verdict(line, written, entry);
        String before = standing.size() == 1 ? "" : " " + earlier(standing);
        String doubt = grounds.has(Doubt.WHOSE_SPOON) ? " " + WhoseSpoons.OTHERS : "";
        return new LineVerdict(
                component, written, verdict, sure, reason(verdict, written, entry) + before + doubt, evidence);
    }

    /** What may have been said of the line; nothing where it all is bare numbers of quite another size. */
    private List<Mention> counted(int line, List<Mention> mentions) {
        if (!heard.on(Mechanism.SIZE_OF_SLIPS)) {
            return mentions;
        }
        SlipOfTongue slip = new SlipOfTongue(heard.lines.get(line), heard.household);
        List<Mention> some = slip.notTooMuch(mentions);
        if (folded(line, some).stream().anyMatch(slip::isLikely)) {
            List<Mention> weighed = some.stream().filter(slip::isNoPinchTried).toList();
            return weighed.isEmpty() ? some : weighed;
        }
        List<Mention> likely = slip.likely(mentions);
        boolean bare = mentions.stream().allMatch(Mention::assumedUnit);
        return likely.isEmpty() && !bare && strays.anyFirm(mentions) ? mentions : likely;
    }

    private List<Ledger.Entry> standing(int line, List<Mention> counted) {
        List<Ledger.Entry> standing = folded(line, counted);
        SlipOfTongue slip = new SlipOfTongue(heard.lines.get(line), heard.household);
        boolean any = heard.on(Mechanism.SIZE_OF_SLIPS) && standing.stream().anyMatch(slip::isLikely);
        return any ? slip.withoutSteps(standing) : standing;
    }

    private List<Ledger.Entry> folded(int line, List<Mention> mentions) {
        return mentions.isEmpty()
                ? List.of()
                : inParts(
                        heard.lines.get(line),
                        Ledger.fold(mentions, heard.household, heard.ingredientOfLine.get(line)));
    }

    /**
     * "three hundred with the ends on … two fifty": who ends on what is written, and soon or in thinking it over, has come
     * to it; but what was said twice is not overturned by what is said once.
     */
    private boolean isLastWord(int line, List<Ledger.Entry> standing) {
        Ledger.Entry last = standing.get(standing.size() - 1);
        int until = standing.subList(0, standing.size() - 1).stream()
                .flatMap(entry -> entry.mentions().stream())
                .mapToInt(Mention::end)
                .max()
                .orElseThrow();
        int from = last.mentions().get(0).start();
        boolean saidAsOften = standing.stream()
                .allMatch(entry -> entry.mentions().size() <= last.mentions().size());
        return heard.on(Mechanism.LAST_WORD)
                && saidAsOften
                && !last.isProvisional()
                && from >= until
                && (from - until <= ONE_BREATH || isThoughtOver(last))
                && judge.of(line, last.quantity(), heard) == Verdict.AGREES;
    }

    /** "you're dead right … it's four hundred", "two hundred and here's the last fifty, so two fifty". */
    private boolean isThoughtOver(Ledger.Entry last) {
        Mention first = last.mentions().get(0);
        return THOUGHT_OVER.stream()
                .anyMatch(kind -> heard.phrases.within(kind, first.start() - OVER_BEFORE, first.end() + OVER_BEHIND));
    }

    private Grounds grounds(IngredientLine written, List<Mention> mentions, List<Ledger.Entry> standing) {
        Grounds grounds = Grounds.of(mentions, standing, heard);
        boolean whose = standing.size() == 1
                && written.quantity()
                        .filter(figure ->
                                judge.isByOtherSpoon(figure, standing.get(0).quantity()))
                        .isPresent();
        Grounds spoons = whose ? grounds.with(Doubt.WHOSE_SPOON) : grounds;
        boolean readOut = standing.size() == 1 && sheet.isOnlyReadOut(standing.get(0), homeless);
        return readOut ? spoons.with(Doubt.ONLY_READ_OUT) : spoons;
    }

    /** @param farOff numbers too far from what is written to be meant */
    private LineVerdict silence(String component, int line, List<Mention> farOff) {
        List<SpokenQuantity> strays = Grounds.strays(line, homeless, heard);
        String far = farOff.stream()
                .findFirst()
                .map(mention -> " At " + clock(mention.start()) + " " + QuantityWriter.text(mention.quantity())
                        + " may be heard of it, which is so far from what is written that it is taken for something"
                        + " else: listen.")
                .orElse("");
        String doubt = strays.stream()
                .findFirst()
                .map(stray -> " At " + clock(stray.start()) + " an amount near its name found no ingredient: listen.")
                .orElse("");
        return new LineVerdict(
                component,
                heard.lines.get(line),
                Verdict.UNSPOKEN,
                Certainty.ofSilence(strays.size() + farOff.size()),
                "Nobody says how much: it must be in the description." + far + doubt,
                List.of());
    }

    private String clock(int word) {
        return Clock.hms(heard.words.moment(word).at());
    }

    /** "One stick, so that's half a cup": one amount in two measures is judged by the one that is written. */
    private Verdict verdict(int line, IngredientLine written, Ledger.Entry entry) {
        Verdict verdict = verdict(line, written, entry.quantity());
        if (entry.mentions().stream().anyMatch(mention -> mention.role() == Role.ADDS)) {
            return verdict;
        }
        return entry.mentions().stream()
                .filter(mention -> mention.quantity().unit() != entry.quantity().unit())
                .map(mention -> verdict(line, written, mention.quantity()))
                .filter(other -> other.compareTo(verdict) < 0)
                .findFirst()
                .orElse(verdict);
    }

    private Verdict verdict(int line, IngredientLine written, Quantity said) {
        return Judge.figures(written, said).stream()
                .map(figure -> {
                    Verdict verdict = judge.of(figure, said, heard.ingredientOfLine.get(line));
                    heard.trail.held(line, new Trail.Held(figure, said, verdict));
                    return verdict;
                })
                .min(Comparator.naturalOrder())
                .orElse(Verdict.DIFFERS);
    }

    /** Amounts, each surely of the line, that contradict each other but add up to what is written were said in parts. */
    private List<Ledger.Entry> inParts(IngredientLine written, List<Ledger.Entry> standing) {
        if (standing.size() != 2
                || written.quantity().isEmpty()
                || standing.stream()
                        .anyMatch(entry -> entry.score() < Scoring.SURE || InPieces.isOneThing(entry.quantity()))) {
            return standing;
        }
        Optional<Quantity> sum = new Reckoner(heard.household, Optional.empty())
                .sum(standing.get(0).quantity(), standing.get(1).quantity());
        boolean adds = sum.filter(total -> !total.amount().hedged())
                .filter(total -> judge.of(written.quantity().get(), total, Optional.empty()) == Verdict.AGREES)
                .isPresent();
        if (!adds) {
            return standing;
        }
        List<Mention> all = new ArrayList<>(standing.get(0).mentions());
        all.addAll(standing.get(1).mentions());
        return List.of(new Ledger.Entry(sum.get(), all));
    }

    private List<Evidence> evidence(List<Ledger.Entry> standing) {
        Set<Evidence> evidence = new LinkedHashSet<>();
        standing.stream()
                .flatMap(entry -> entry.mentions().stream())
                .sorted(Comparator.comparing(Mention::start))
                .forEach(mention ->
                        evidence.add(heard.evidence(mention.start(), mention.end(), Optional.of(mention.quantity()))));
        return List.copyOf(evidence);
    }

    private String contradiction(List<Ledger.Entry> standing) {
        return "Two amounts are %s and neither is taken back: %s.".formatted(low(heard.told()), Telling.all(standing));
    }

    /** What was said before the last word. */
    private String earlier(List<Ledger.Entry> standing) {
        String amounts = Telling.all(standing.subList(0, standing.size() - 1));
        return "%s was %s before: listen.".formatted(amounts, low(heard.told()));
    }

    private String reason(Verdict verdict, IngredientLine written, Ledger.Entry entry) {
        String said = QuantityWriter.text(entry.quantity());
        String figure = written.quantity().map(QuantityWriter::text).orElse("no amount");
        boolean assumed = entry.mentions().stream().allMatch(Mention::assumedUnit);
        String unit = assumed ? " Only the number is " + low(heard.told()) + "; the unit is the recipe's." : "";
        String how = entry.mentions().stream().anyMatch(mention -> mention.role() == Role.ADDS)
                ? " in parts"
                : entry.mentions().stream().anyMatch(mention -> mention.role() == Role.CORRECTS)
                        ? " after a correction"
                        : "";
        return switch (verdict) {
            case AGREES -> heard.told() + " as written" + how + ": " + said + "." + unit;
            case APPROXIMATE -> heard.told() + " as " + said + how + ", close to the written " + figure + "." + unit;
            case DIFFERS -> heard.told() + " as " + said + how + "; " + figure + " is written." + unit;
            case UNSPOKEN -> "";
        };
    }

    private static String low(String word) {
        return word.toLowerCase(Locale.ROOT);
    }
}
