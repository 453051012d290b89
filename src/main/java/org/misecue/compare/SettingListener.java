package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.compare.Settled.Said;
import org.misecue.compare.YieldMatch.Plainness;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Setting.Kind;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Sorts what was said of the oven, of times, tins and yield to the written settings, before ingredients get the rest. */
final class SettingListener {

    private static final int PUT_RIGHT_REACH = 10;

    private final Hearing heard;
    private final Repairs repairs;
    private final OvenMatch ovens;
    private final DurationMatch durations;
    private final TinMatch tins;
    private final YieldMatch yields;
    private final LeftOutUnit leftOut;
    private final HereAndNow now;
    private final Map<Setting, List<Said>> said = new HashMap<>();
    /** Where the heat ended that was taken last. */
    private int lastHeat = -PUT_RIGHT_REACH;

    SettingListener(Hearing heard) {
        this.heard = heard;
        this.repairs = new Repairs(heard);
        Surroundings around = new Surroundings(heard);
        this.ovens = new OvenMatch(heard, around, settings(Kind.OVEN_TEMPERATURE));
        this.durations = new DurationMatch(heard, around, settings(Kind.DURATION));
        this.tins = new TinMatch(heard, around, settings(Kind.PAN));
        this.yields = new YieldMatch(heard);
        this.leftOut = new LeftOutUnit(heard);
        this.now = new HereAndNow(heard);
    }

    List<Said> saidOf(Setting setting) {
        return said.getOrDefault(setting, List.of());
    }

    /** @param given where the amounts begin that belong to an ingredient */
    void lookAgain(Set<Integer> given) {
        Set<Integer> taken = new HashSet<>(given);
        said.values().forEach(all -> all.forEach(one -> taken.add(one.words().start())));
        List<SpokenQuantity> left = heard.quantities.stream()
                .filter(words -> !taken.contains(words.start()))
                .toList();
        MissedSettings missed = new MissedSettings(heard, ovens, left);
        Stream.of(Kind.OVEN_TEMPERATURE, Kind.PAN, Kind.DURATION)
                .flatMap(kind -> settings(kind).stream())
                .filter(setting -> !isSaid(setting))
                .forEach(setting -> missed.of(setting).ifPresent(one -> keep(setting, one)));
    }

    private boolean isSaid(Setting setting) {
        return said.containsKey(setting);
    }

    /** Whether the amount belongs to a setting, or at least to no ingredient. */
    boolean take(SpokenQuantity words) {
        if (tins.isByWeight(words)) {
            return takeSize(words);
        }
        Optional<SpokenQuantity> side = tins.bySides(words).or(() -> tins.byHoles(words));
        if (side.isPresent()) {
            return takeSize(side.get());
        }
        if (words.isAside() && !mayStillSet(words)) {
            return false;
        }
        if (words.manner() == Manner.HEAT
                || ovens.isBareHeat(words)
                || isGoingOn(words, Dimension.TEMPERATURE)
                || isHeatPutRight(words)) {
            return takeHeat(words);
        }
        Optional<Dimension> dimension = words.unit().map(Unit::dimension);
        if (dimension.equals(Optional.of(Dimension.DURATION)) || isGoingOn(words, Dimension.DURATION)) {
            return takeTime(words);
        }
        if (dimension.equals(Optional.of(Dimension.LENGTH))) {
            return takeSize(words);
        }
        return words.manner() == Manner.BARE && !words.isAside(Aside.Kind.ALTERNATIVE) && takeYield(words);
    }

    /**
     * What a fan oven would need is told as a condition, an oven goes "up to" a number, pieces are counted things, and
     * stories end without a sign.
     */
    private boolean mayStillSet(SpokenQuantity words) {
        boolean heat = words.manner() == Manner.HEAT || words.manner() == Manner.BARE;
        boolean named = words.isAside(Aside.Kind.NAMED) || words.isAside(Aside.Kind.LEVEL);
        boolean aSide = words.isAside(Aside.Kind.PORTION)
                && words.unit().map(Unit::dimension).equals(Optional.of(Dimension.DURATION));
        return (heat && words.isAside(Aside.Kind.ALTERNATIVE) && !PassingTime.isOffered(words, heard))
                || (named && ovens.isBareHeat(words) && !PassingTime.isOffered(words, heard))
                || words.isAside(Aside.Kind.COUNT)
                || aSide
                || now.isAfterAll(words);
    }

    /** "three fifty – no, it's not, it's three seventy five", "gas mark two or a hundred and fifty". */
    private boolean isHeatPutRight(SpokenQuantity words) {
        boolean or = words.start() == lastHeat + 1 && heard.words.text(lastHeat).equals("or");
        return ovens.couldBe(words)
                && words.start() - lastHeat <= PUT_RIGHT_REACH
                && (or || repairs.isRepaired(lastHeat, words.start()));
    }

    /** "forty five of the starch", "forty five on my scale", "I've cut it in ten". */
    private boolean isWeighed(SpokenQuantity words) {
        return heard.words.text(words.end()).equals("of")
                || heard.words.normal(words.start() - 3, words.start()).matches("cut (?:it|them|this|that) (?:in|into)")
                || heard.words.normal(words.end(), words.end() + 3).matches("on (?:my|the|your) scales?");
    }

    private boolean isGoingOn(SpokenQuantity words, Dimension dimension) {
        return leftOut.unit(words)
                .filter(unit -> unit.dimension() == dimension)
                .filter(unit -> dimension != Dimension.TEMPERATURE || ovens.couldBe(words))
                .filter(unit -> !isWeighed(words))
                .isPresent();
    }

    private List<Setting> settings(Kind kind) {
        return heard.recipe.allSettings().stream()
                .filter(setting -> setting.kind() == kind && heard.on(mechanism(kind)))
                .toList();
    }

    private static Mechanism mechanism(Kind kind) {
        return switch (kind) {
            case OVEN_TEMPERATURE -> Mechanism.OVENS;
            case DURATION -> Mechanism.TIMES;
            case PAN -> Mechanism.TINS;
            case YIELD -> Mechanism.YIELDS;
        };
    }

    private void keep(Setting setting, Said one) {
        said.computeIfAbsent(setting, k -> new ArrayList<>()).add(one);
    }

    private boolean takeHeat(SpokenQuantity words) {
        Optional<Setting> found = now.isOfOthers(words) ? Optional.empty() : ovens.best(words, this::isSaid);
        found.ifPresent(oven -> {
            Quantity heat = ovens.quantity(words, oven);
            keep(oven, new Said(words, heat, Plainness.MADE));
            leftOut.heard(words, heat.unit());
            lastHeat = words.end();
        });
        return true;
    }

    private boolean takeTime(SpokenQuantity words) {
        Quantity time = words.quantity()
                .orElseGet(
                        () -> new Quantity(words.amount(), leftOut.unit(words).orElse(Unit.MINUTE)));
        leftOut.heard(words, time.unit());
        if (now.isOfOthers(words)) {
            return true;
        }
        durations
                .best(words, time, this::isSaid)
                .ifPresent(setting -> keep(setting, new Said(words, time, Plainness.MADE)));
        return true;
    }

    private boolean takeSize(SpokenQuantity words) {
        tins.best(words, words.quantity().orElseThrow())
                .ifPresent(tin -> keep(tin, new Said(words, tins.size(words, tin), Plainness.MADE)));
        return true;
    }

    private boolean takeYield(SpokenQuantity words) {
        Optional<Setting> yield = settings(Kind.YIELD).stream().findFirst();
        Optional<Plainness> plainness = yield.flatMap(one -> yields.plainness(words, one));
        plainness.ifPresent(found -> keep(yield.orElseThrow(), new Said(words, yields.quantity(words), found)));
        return plainness.isPresent();
    }
}
