package org.misecue.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.misecue.notice.Note;
import org.misecue.quantity.CupsAndSpoons;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import tech.units.indriya.function.RationalNumber;

/**
 * A recipe at another size as plain text for who weighs by it: what to weigh, and where that is rounded, the exact amount
 * and how far off it is.
 */
public final class ScaledText {

    private static final int WIDEST = 36;

    private static final int AMOUNT = 12;

    private final ScaledSheet sheet;
    private final ScaledRecipe scaled;

    private ScaledText(ScaledSheet sheet) {
        this.sheet = sheet;
        this.scaled = sheet.scaled();
    }

    /** The text, ending with a line break. */
    public static String of(ScaledSheet sheet) {
        return new ScaledText(sheet).text();
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        text.append(scaled.recipe().title())
                .append(" × ")
                .append(number(scaled.factor(), 4))
                .append(sheet.sets().equals(Sets.ONE) ? "" : ", " + sheet.sets().words())
                .append('\n');
        if (Spoons.matterTo(scaled)) {
            text.append("Measures: ")
                    .append(Spoons.words(sheet.first().household()))
                    .append(sheet.beside()
                            .map(other -> "; in brackets " + Spoons.words(other.household()))
                            .orElse(""))
                    .append('\n');
        }
        sheet.settings().ifPresent(system -> SettingFigures.of(scaled.recipe(), system)
                .forEach(line -> text.append(line).append('\n')));
        List<String> amounts =
                IntStream.range(0, scaled.lines().size()).mapToObj(this::amount).toList();
        int wide = amounts.stream().mapToInt(String::length).max().orElse(0);
        String component = "\0";
        for (int at = 0; at < scaled.lines().size(); at++) {
            WeighedLine line = scaled.lines().get(at);
            if (!line.component().equals(component)) {
                component = line.component();
                text.append('\n').append(Component.heading(component)).append('\n');
            }
            String amount = amounts.get(at);
            text.append("  ")
                    .append(" ".repeat(Math.max(AMOUNT, wide) - amount.length()))
                    .append(amount)
                    .append("  ")
                    .append(rest(line))
                    .append('\n');
        }
        worst(scaled).ifPresent(worst -> text.append("\nFurthest off by rounding: ")
                .append(worst)
                .append('\n'));
        if (!scaled.warnings().isEmpty()) {
            text.append("\nNotes\n");
            for (Note note : scaled.warnings()) {
                text.append("  ").append(note).append('\n');
            }
        }
        return text.toString();
    }

    private String amount(int at) {
        Optional<String> own = amount(sheet.first(), at);
        return own.orElse("–")
                + sheet.beside()
                        .flatMap(other -> amount(other, at))
                        .filter(other -> !Optional.of(other).equals(own))
                        .map(other -> " (" + other + ")")
                        .orElse("");
    }

    private static Optional<String> amount(ScaledSheet.Column column, int at) {
        return column.scaled()
                .lines()
                .get(at)
                .weighed()
                .map(weighed -> CupsAndSpoons.text(weighed, column.household()));
    }

    private String rest(WeighedLine line) {
        List<String> remarks = new ArrayList<>();
        if (sheet.sets().all() > 1) {
            line.weighed()
                    .filter(weighed -> weighed.amount().most().isPresent())
                    .ifPresent(weighed -> remarks.add("in all " + inAll(weighed)));
        }
        if (line.isRounded()) {
            remarks.add("exactly " + exact(line) + ", " + off(line));
        }
        scaled.share(line).ifPresent(share -> remarks.add(percent(share) + " of the flour"));
        String name = line.written().ingredient();
        return remarks.isEmpty()
                ? name
                : name + " ".repeat(Math.max(1, WIDEST - name.length())) + String.join("; ", remarks);
    }

    /** What every set together takes: the sum of what is weighed, by the jug where it is too many spoons. */
    private String inAll(Quantity weighed) {
        Quantity total = weighed.times(Rationals.of(sheet.sets().all()));
        Quantity rounded = new KitchenRounding(
                        sheet.rules().resolution(), sheet.first().household())
                .round(total)
                .quantity();
        boolean jug = rounded.unit() != total.unit() && rounded.unit() == Unit.MILLILITRE;
        return CupsAndSpoons.text(jug ? rounded : total, sheet.first().household());
    }

    /** With more places than a kitchen writes, for here the difference is the point. */
    private static String exact(WeighedLine line) {
        Quantity exact = line.exact().orElseThrow();
        String unit =
                exact.unit().code().equals("each") ? "" : " " + exact.unit().code();
        return exact.amount().most().map(value -> number(value, 3)).orElse("") + unit;
    }

    private static String off(WeighedLine line) {
        RationalNumber error = line.error().orElseThrow();
        return (error.signum() < 0 ? "−" : "+") + percent(error.abs());
    }

    private static Optional<String> worst(ScaledRecipe scaled) {
        return scaled.furthestOff().map(line -> line.written().ingredient() + ", " + off(line));
    }

    private static String percent(RationalNumber share) {
        RationalNumber percent = share.multiply(Rationals.of(100));
        String near = number(percent, 1);
        return (near.equals("0") ? number(percent, 3) : near) + " %";
    }

    private static String number(RationalNumber value, int places) {
        return Rationals.rounded(value, places).toPlainString();
    }
}
