package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * Which written oven temperature a spoken one is about. It counts when the oven is spoken of near by, or when nothing else
 * explains it: sugar, frying oil and the inside of a loaf have temperatures too.
 */
final class OvenMatch {

    private static final RationalNumber COOLEST = Rationals.of(80);

    /** Milk, custard, dough and melted chocolate are never so hot. */
    private static final RationalNumber HOTTER_THAN_FOOD = Rationals.of(120);

    private static final RationalNumber HOTTEST_C = Rationals.of(270);
    private static final RationalNumber HOTTEST_F = Rationals.of(520);
    private static final double FARTHEST = 1.5;

    private static final double TELLING = 0.2;
    private static final double BESIDE_TIME = 0.7;
    private static final int TURNED_REACH = 12;
    private static final int NAMED_REACH = 12;
    private static final Set<String> TURNING = Set.of("down", "up", "reduce", "lower", "increase", "raise");
    private static final Set<String> NOT_TELLING = Set.of("oven", "heat", "bake", "minute", "down", "turn", "degree");

    private final Hearing heard;
    private final Surroundings around;
    private final List<Setting> ovens;

    OvenMatch(Hearing heard, Surroundings around, List<Setting> ovens) {
        this.heard = heard;
        this.around = around;
        this.ovens = ovens;
    }

    /** A bare number that an oven could have, with the oven spoken of and no ingredient that it could be an amount of. */
    boolean isBareHeat(SpokenQuantity said) {
        boolean ingredient = isOfIngredient(said)
                && !HeatAndTime.isHeatBesideTime(said, heard)
                && !(isWritten(said)
                        && heard.phrases.within(Kind.OF_THE_OVEN, said.start() - NAMED_REACH, said.start()));
        return couldBe(said)
                && isLikely(said)
                && ofOven(said) >= TELLING
                && ofOven(said) > ofOther(said)
                && !ingredient;
    }

    /**
     * Of twelve oven temperatures that were said otherwise than written none was more than an eighth off; a bare number is
     * one until it is far more.
     */
    private boolean isLikely(SpokenQuantity said) {
        double value = value(said.amount());
        return ovens.stream()
                .flatMap(setting -> setting.figures().stream())
                .flatMapToDouble(OvenMatch::inBothScales)
                .anyMatch(written -> value <= FARTHEST * written && written <= FARTHEST * value);
    }

    private boolean isWritten(SpokenQuantity said) {
        return ovens.stream()
                .flatMap(setting -> setting.figures().stream())
                .anyMatch(figure -> figure.amount().least().equals(said.amount().least()));
    }

    private static DoubleStream inBothScales(Quantity figure) {
        double written = value(figure.amount());
        return figure.unit() == Unit.FAHRENHEIT
                ? DoubleStream.of(written, (written - 32) / 1.8)
                : DoubleStream.of(written, written * 1.8 + 32);
    }

    private static double value(Amount amount) {
        return amount.least().map(RationalNumber::doubleValue).orElse(0.0);
    }

    boolean couldBe(SpokenQuantity said) {
        return said.manner() == Manner.BARE
                && !heard.words.text(said.end()).equals("times")
                && said.amount()
                        .least()
                        .filter(value -> value.compareTo(COOLEST) >= 0
                                && value.compareTo(HOTTEST_F) <= 0
                                && Rationals.isWhole(value.divide(Rationals.of(5))))
                        .isPresent();
    }

    /** "a hundred and fifty of sugar", or a name between the oven and the number. */
    private boolean isOfIngredient(SpokenQuantity said) {
        return heard.namesIn(said.end(), said.end() + 3).stream().anyMatch(name -> name.inRecipe())
                || heard.namesIn(said.start() - 4, said.start()).stream()
                        .anyMatch(name -> name.inRecipe()
                                && !heard.words.walled(name.end(), said.start())
                                && !heard.phrases.within(Kind.OF_THE_OVEN, name.end(), said.start())
                                && !heard.phrases.within(Kind.TURNED, name.end(), said.start()));
    }

    private double ofOven(SpokenQuantity said) {
        double told = around.weight(said, Kind.OF_THE_OVEN);
        return HeatAndTime.isHeatBesideTime(said, heard) ? Math.max(told, BESIDE_TIME) : told;
    }

    private double ofOther(SpokenQuantity said) {
        boolean slight = said.amount()
                .most()
                .filter(value -> value.compareTo(HOTTER_THAN_FOOD) < 0)
                .isPresent();
        double hot = around.weight(said, Kind.OF_OTHER_HEAT);
        return slight ? Math.max(hot, around.weight(said, Kind.OF_SLIGHT_HEAT)) : hot;
    }

    /** The oven temperature with which the spoken one is to be compared. */
    Optional<Setting> best(SpokenQuantity said, Predicate<Setting> isSaid) {
        boolean gas = said.unit().equals(Optional.of(Unit.GAS_MARK));
        double oven = ofOven(said);
        double other = ofOther(said);
        boolean told = oven >= TELLING && oven > other;
        boolean unexplained = other < TELLING && said.isAtLeast(HOTTER_THAN_FOOD);
        if (!gas && !told && !unexplained) {
            return Optional.empty();
        }
        return ovens.stream().max(Comparator.comparingDouble(setting -> score(setting, said, isSaid)));
    }

    /** In the scale that was said; a number too high for Celsius is one of Fahrenheit. */
    Quantity quantity(SpokenQuantity said, Setting setting) {
        boolean fahrenheitOnly = said.amount()
                .least()
                .filter(value -> value.compareTo(HOTTEST_C) > 0)
                .isPresent();
        Unit written = setting.quantity().unit() == Unit.GAS_MARK
                ? Unit.CELSIUS
                : setting.quantity().unit();
        return new Quantity(said.amount(), said.unit().orElse(fahrenheitOnly ? Unit.FAHRENHEIT : written));
    }

    private double score(Setting setting, SpokenQuantity said, Predicate<Setting> isSaid) {
        int away = Math.abs(heard.stepAt(said.start()) - setting.step());
        double score = away == 0 ? 1 : away == 1 ? 0.5 : 0;
        boolean turned = heard.phrases.within(Kind.TURNED, said.start() - TURNED_REACH, said.start());
        score += turned == isTurning(setting) ? 1 : 0;
        score += named(setting, said);
        return score + (isSaid.test(setting) ? 0 : 0.1);
    }

    private boolean isTurning(Setting setting) {
        int own = ovens.indexOf(setting);
        return own > 0
                && (ovens.get(own - 1).step() == setting.step()
                        || stepWords(setting).stream().anyMatch(TURNING::contains));
    }

    private double named(Setting setting, SpokenQuantity said) {
        Set<String> own = stepWords(setting);
        double named = 0;
        for (int at = said.start() - NAMED_REACH; at < said.start(); at++) {
            String word = Words.singular(heard.words.text(at));
            named += own.contains(word) && !NOT_TELLING.contains(word) ? 0.3 : 0;
        }
        return Math.min(0.9, named);
    }

    private Set<String> stepWords(Setting setting) {
        return setting.step() == 0
                ? Set.of()
                : Words.content(heard.recipe.steps().get(setting.step() - 1).text());
    }
}
