package org.misecue.scale;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import tech.units.indriya.function.RationalNumber;

/** Ovens and tins in another system, each as a person sets or buys it, with the exact figure where that differs. */
final class SettingFigures {

    /** Dials go by 25 °F or 5 °C; tins are sold by whole centimetres and half inches: common practice, no source. */
    private static final RationalNumber DIAL_F = Rationals.of(25);

    private static final RationalNumber DIAL_C = Rationals.of(5);
    private static final RationalNumber HALF = Rationals.of(1, 2);

    private SettingFigures() {}

    /** One line for each oven and tin of the recipe that is written in the other system. */
    static List<String> of(Recipe recipe, Measuring system) {
        return recipe.allSettings().stream()
                .flatMap(setting -> line(setting, system).stream())
                .distinct()
                .toList();
    }

    private static Optional<String> line(Setting setting, Measuring system) {
        boolean metric = system == Measuring.METRIC;
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> figure("Oven", setting, metric ? Unit.CELSIUS : Unit.FAHRENHEIT);
            case PAN -> figure("Tin", setting, metric ? Unit.CENTIMETRE : Unit.INCH);
            case DURATION, YIELD -> Optional.empty();
        };
    }

    private static Optional<String> figure(String name, Setting setting, Unit unit) {
        if (setting.quantity().dimension() != unit.dimension()
                || setting.quantity().unit() == unit) {
            return Optional.empty();
        }
        List<Quantity> sizes = Stream.concat(
                        Stream.of(setting.quantity()),
                        setting.also().stream()
                                .filter(each -> unit.dimension() == Dimension.LENGTH
                                        && each.unit() == setting.quantity().unit()))
                .toList();
        String from = joined(sizes);
        List<Quantity> exact =
                sizes.stream().map(size -> size.in(unit, Household.METRIC)).toList();
        List<Quantity> set = exact.stream()
                .map(size -> size.map(value -> Rationals.nearest(value, step(unit))))
                .toList();
        String exactly = set.equals(exact)
                ? ""
                : " (exactly "
                        + joined(exact.stream().map(SettingFigures::plain).toList()) + ")";
        String what = setting.kind() == Setting.Kind.PAN ? " " + setting.what() : "";
        return Optional.of("%s: %s%s is %s%s".formatted(name, from, what, joined(set), exactly));
    }

    private static RationalNumber step(Unit unit) {
        return switch (unit) {
            case FAHRENHEIT -> DIAL_F;
            case CELSIUS -> DIAL_C;
            case INCH -> HALF;
            default -> Rationals.ONE;
        };
    }

    private static Quantity plain(Quantity size) {
        return size.map(value -> Rationals.of(Rationals.rounded(value, 1)));
    }

    private static String joined(List<Quantity> sizes) {
        return String.join(" × ", sizes.stream().map(QuantityWriter::text).toList());
    }
}
