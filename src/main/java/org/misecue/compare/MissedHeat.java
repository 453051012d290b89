package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.compare.YieldMatch.Plainness;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.Setting;
import org.misecue.spoken.SpokenQuantity;

/**
 * Looks once more for an oven that nobody seems to have set: "mine's a fan so it's on a hundred and seventy". A bare number
 * that found no ingredient and is just as hot as it is written was hardly said of anything else.
 */
final class MissedHeat {

    private final OvenMatch oven;
    private final List<SpokenQuantity> homeless;

    MissedHeat(OvenMatch oven, List<SpokenQuantity> homeless) {
        this.oven = oven;
        this.homeless = homeless;
    }

    /** @param setting an oven temperature */
    Optional<Settled.Said> of(Setting setting) {
        return homeless.stream()
                .filter(oven::couldBe)
                .flatMap(said -> figures(setting)
                        .filter(figure -> figure.amount().equals(said.amount()))
                        .map(figure -> new Settled.Said(said, figure, Plainness.MADE)))
                .findFirst();
    }

    private static Stream<Quantity> figures(Setting setting) {
        return Stream.of(Stream.of(setting.quantity()), setting.fan().stream(), setting.also().stream())
                .flatMap(figures -> figures);
    }
}
