package org.misecue.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.scale.Measuring;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.ScaledSheet;
import org.misecue.scale.ScaledSheet.Column;
import org.misecue.scale.Sets;
import picocli.CommandLine.Option;

/** How a batch is shown: for how many takes, in which measures. */
final class SheetOptions {

    @Option(
            names = "--takes",
            paramLabel = "N",
            description =
                    "How many takes it is weighed out for, 1 to 20; what all of them need stands beside each amount.")
    private int takes = 1;

    @Option(names = "--spare", paramLabel = "N", description = "Sets that stand by besides, 0 to 20.")
    private int spare;

    @Nullable
    @Option(
            names = "--in",
            paramLabel = "MEASURES",
            description = "Other measures: metric, us, imperial, or both (metric with us beside it).")
    private String in;

    @Nullable
    @Option(
            names = "--spoons",
            paramLabel = "WHOSE",
            description = "Whose spoons and cups the recipe means: metric, us, us-label, uk or australia.")
    private String spoons;

    /** Whether anything is asked for that a batch is needed for. */
    boolean asked() {
        return takes != 1 || spare != 0 || in != null || spoons != null;
    }

    ScaleRules rules(ScaleRules kitchen) {
        if (spoons == null) {
            return kitchen;
        }
        return Household.ofKey(spoons)
                .map(kitchen::with)
                .orElseThrow(() -> new BadInput(
                        Place.of("--spoons"),
                        "spoons are metric, us, us-label, uk or australia, not “" + spoons + "”."));
    }

    ScaledSheet sheet(ScaledRecipe scaled, ScaleRules rules, Pantry pantry) {
        if (in == null) {
            Column own = new Column(scaled, rules.household());
            return new ScaledSheet(own, Optional.empty(), sets(), rules, Optional.empty());
        }
        boolean both = in.equals("both");
        Measuring first = both ? Measuring.METRIC : system(in);
        Optional<Column> beside = both ? Optional.of(Measuring.US.write(scaled, rules, pantry)) : Optional.empty();
        return new ScaledSheet(first.write(scaled, rules, pantry), beside, sets(), rules, Optional.of(first));
    }

    private static Measuring system(String word) {
        return switch (word) {
            case "metric" -> Measuring.METRIC;
            case "us" -> Measuring.US;
            case "imperial" -> Measuring.IMPERIAL;
            default ->
                throw new BadInput(Place.of("--in"), "measures are metric, us, imperial or both, not “" + word + "”.");
        };
    }

    private Sets sets() {
        if (takes < 1 || takes > Sets.MOST) {
            throw new BadInput(Place.of("--takes"), "takes go from 1 to 20, not " + takes + ".");
        }
        if (spare < 0 || spare > Sets.MOST) {
            throw new BadInput(Place.of("--spare"), "spare sets go from 0 to 20, not " + spare + ".");
        }
        return new Sets(takes, spare);
    }
}
