package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import org.misecue.compare.Settled.Said;
import org.misecue.compare.YieldMatch.Plainness;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.Setting;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/**
 * Looks once more for a setting that nobody seems to have told: "mine's a fan so it's on a hundred and seventy", "ten inches
 * on the button". What is just as it is written and was said of nothing else was hardly said by chance.
 */
final class MissedSettings {

    private final Hearing heard;
    private final OvenMatch oven;
    private final Judge judge;
    private final List<SpokenQuantity> free;

    /** @param free amounts that belong to no setting and no ingredient */
    MissedSettings(Hearing heard, OvenMatch oven, List<SpokenQuantity> free) {
        this.heard = heard;
        this.oven = oven;
        this.judge = new Judge(heard.household);
        this.free = free;
    }

    Optional<Said> of(Setting setting) {
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> first(setting, this::isHeat);
            case PAN -> first(setting, said -> isOf(said, Dimension.LENGTH));
            case DURATION ->
                first(setting, said -> isOf(said, Dimension.DURATION) && heard.stepAt(said.start()) == setting.step());
            case YIELD -> Optional.empty();
        };
    }

    private interface Fitting {
        boolean fits(SpokenQuantity said);
    }

    private Optional<Said> first(Setting setting, Fitting fitting) {
        return free.stream()
                .filter(fitting::fits)
                .flatMap(said -> setting.figures().stream()
                        .filter(figure -> isAsWritten(said, figure))
                        .map(figure -> new Said(said, quantity(said, figure), Plainness.MADE)))
                .findFirst();
    }

    private boolean isHeat(SpokenQuantity said) {
        return said.manner() == Manner.HEAT || oven.couldBe(said);
    }

    private static boolean isOf(SpokenQuantity said, Dimension dimension) {
        return said.unit().filter(unit -> unit.dimension() == dimension).isPresent() && !said.isAside();
    }

    private boolean isAsWritten(SpokenQuantity said, Quantity figure) {
        Quantity quantity = quantity(said, figure);
        return quantity.dimension() == figure.dimension()
                && judge.of(figure, quantity, Optional.empty()) != Verdict.DIFFERS
                && (said.unit().isPresent()
                        || quantity.amount().least().equals(figure.amount().least()));
    }

    private static Quantity quantity(SpokenQuantity said, Quantity figure) {
        return said.quantity().orElseGet(() -> new Quantity(said.amount(), figure.unit()));
    }
}
