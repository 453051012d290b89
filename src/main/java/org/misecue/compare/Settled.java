package org.misecue.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.misecue.compare.YieldMatch.Plainness;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import tech.units.indriya.function.RationalNumber;

/** What was said of one written setting, folded into a verdict: the last word counts where it repairs what stood before. */
final class Settled {

    /** One figure said for a setting, in units. */
    record Said(SpokenQuantity words, Quantity quantity, Plainness plainness) {}

    private static final int READ_REACH = 7;

    private final Hearing heard;
    private final Judge judge;
    private final SettingRoles roles;
    private final RationalNumber batch;

    /** @param batch how many written batches are made */
    Settled(Hearing heard, RationalNumber batch) {
        this.heard = heard;
        this.judge = new Judge(heard.household);
        this.roles = new SettingRoles(heard);
        this.batch = batch;
    }

    SettingVerdict of(Setting setting, List<Said> all) {
        List<Said> standing = standing(setting, all);
        if (standing.isEmpty()) {
            return new SettingVerdict(setting, Verdict.UNSPOKEN, Certainty.ofSilence(0), "Nobody says it.", List.of());
        }
        List<Verdict> verdicts =
                standing.stream().map(said -> verdict(setting, said.quantity())).toList();
        Verdict best = verdicts.stream().min(Comparator.naturalOrder()).orElseThrow();
        Verdict worst = verdicts.stream().max(Comparator.naturalOrder()).orElseThrow();
        Verdict verdict = worst == Verdict.DIFFERS && !isSaidInPlace(setting, standing, best) ? worst : best;
        Confidence sure = Certainty.of(Grounds.of(standing, best, worst));
        return new SettingVerdict(setting, verdict, sure, reason(verdict, setting, standing), evidence(standing));
    }

    /**
     * Whether the last of several figures that was said where it belongs is the written one. More times and heats are
     * spoken of than are set: what others rest, the first look, the tray that is in already.
     */
    private boolean isSaidInPlace(Setting setting, List<Said> standing, Verdict best) {
        List<Said> inPlace = unless(standing, said -> !isInStep(setting, said));
        Said last = inPlace.get(inPlace.size() - 1);
        return best != Verdict.DIFFERS && verdict(setting, last.quantity()) == best;
    }

    private boolean isInStep(Setting setting, Said said) {
        return heard.stepAt(said.words().start()) == setting.step();
    }

    /** What counts in the end: figures put better elsewhere, taken back, or not told for the written batch are gone. */
    private List<Said> standing(Setting setting, List<Said> told) {
        List<Said> all = unless(told, said -> isRead(said.words()));
        Plainness plainest =
                all.stream().map(Said::plainness).max(Comparator.naturalOrder()).orElse(Plainness.COUNTED);
        List<Said> standing = folded(
                setting,
                all.stream().filter(said -> said.plainness() == plainest).toList());
        if (!batch.equals(Rationals.ONE)) {
            standing = unless(standing, said -> !roles.isForViewers(said.words()) && anyForViewers(all));
        }
        return unless(
                standing,
                said -> setting.kind() == Setting.Kind.OVEN_TEMPERATURE
                        && setting.fan().isEmpty()
                        && roles.isForFan(said.words()));
    }

    /** "it says an hour, it can say what it likes": no more than what is read, where something else is done. */
    private boolean isRead(SpokenQuantity words) {
        return heard.on(Mechanism.SHEET_AND_HAND)
                && (heard.phrases.within(Kind.PRESCRIBED, words.start() - READ_REACH, words.start())
                        || heard.words.text(words.start() - 1).equals("says")
                        || heard.words.normal(words.end(), words.end() + 2).equals("it says"));
    }

    private boolean anyForViewers(List<Said> all) {
        return all.stream().anyMatch(said -> roles.isForViewers(said.words()));
    }

    /** Without those, if others are left. */
    private static List<Said> unless(List<Said> all, Predicate<Said> out) {
        List<Said> left = all.stream().filter(out.negate()).toList();
        return left.isEmpty() ? all : left;
    }

    private List<Said> folded(Setting setting, List<Said> all) {
        List<Said> standing = new ArrayList<>();
        for (Said said : all) {
            if (standing.isEmpty()) {
                standing.add(said);
                continue;
            }
            int last = standing.size() - 1;
            switch (roles.of(said.words(), standing.get(last).words())) {
                case CORRECTS -> standing.set(last, said);
                case CORRECTS_ALL -> {
                    standing.clear();
                    standing.add(said);
                }
                case ADDS -> standing.set(last, sum(setting, standing.get(last), said));
                case STATES -> standing.add(said);
            }
        }
        return standing;
    }

    /** "twenty minutes and then another ten"; but "another ten" may be what is written itself. */
    private Said sum(Setting setting, Said one, Said other) {
        boolean written = verdict(setting, other.quantity()) != Verdict.DIFFERS;
        Optional<RationalNumber> first = one.quantity().amount().least();
        if (written || setting.kind() != Setting.Kind.DURATION || first.isEmpty()) {
            return other;
        }
        Quantity sum =
                other.quantity().in(one.quantity().unit(), heard.household).map(more -> more.add(first.get()));
        return new Said(other.words(), sum, other.plainness());
    }

    private Verdict verdict(Setting setting, Quantity said) {
        Stream<Quantity> told = setting.kind() == Setting.Kind.YIELD && !batch.equals(Rationals.ONE)
                ? Stream.of(said, said.times(batch.reciprocal()))
                : Stream.of(said);
        List<Quantity> figures = setting.figures();
        // 375 °F is held against the 350 °F that is written, not against the 175 °C beside it.
        boolean sameScale = figures.stream().anyMatch(figure -> figure.unit() == said.unit());
        return told.flatMap(one -> figures.stream()
                        .filter(figure -> figure.dimension() == one.dimension())
                        .filter(figure -> !sameScale || figure.unit() == one.unit())
                        .map(figure -> judge.of(figure, one, Optional.empty())))
                .min(Comparator.naturalOrder())
                .orElse(Verdict.DIFFERS);
    }

    private List<Evidence> evidence(List<Said> standing) {
        return standing.stream()
                .map(said -> heard.evidence(said.words().start(), said.words().end(), Optional.of(said.quantity())))
                .toList();
    }

    private String reason(Verdict verdict, Setting setting, List<Said> standing) {
        String said = String.join(
                " and ",
                standing.stream()
                        .map(one -> QuantityWriter.text(one.quantity()))
                        .distinct()
                        .toList());
        String written = QuantityWriter.text(setting.quantity());
        return switch (verdict) {
            case AGREES -> heard.told() + " as written: " + said + ".";
            case APPROXIMATE -> heard.told() + " as " + said + ", close to the written " + written + ".";
            case DIFFERS -> heard.told() + " as " + said + "; " + written + " is written.";
            case UNSPOKEN -> "";
        };
    }
}
