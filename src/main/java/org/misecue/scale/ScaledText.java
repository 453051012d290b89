package org.misecue.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Component;
import tech.units.indriya.function.RationalNumber;

/**
 * A recipe at another size as plain text for who weighs by it: what to weigh, and where that is rounded, the exact amount
 * and how far off it is.
 */
public final class ScaledText {

    private static final int WIDEST = 36;

    private ScaledText() {}

    /** The text, ending with a line break. */
    public static String of(ScaledRecipe scaled) {
        StringBuilder text = new StringBuilder();
        text.append(scaled.recipe().title())
                .append(" × ")
                .append(number(scaled.factor(), 4))
                .append('\n');
        String component = "\0";
        for (WeighedLine line : scaled.lines()) {
            if (!line.component().equals(component)) {
                component = line.component();
                text.append('\n').append(Component.heading(component)).append('\n');
            }
            text.append(row(line, scaled));
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

    private static String row(WeighedLine line, ScaledRecipe scaled) {
        List<String> remarks = new ArrayList<>();
        if (line.isRounded()) {
            remarks.add("exactly " + exact(line) + ", " + off(line));
        }
        scaled.share(line).ifPresent(share -> remarks.add(percent(share) + " of the flour"));
        String amount = line.weighed().map(QuantityWriter::text).orElse("–");
        String name = line.written().ingredient();
        String filled = remarks.isEmpty() ? name : name + " ".repeat(Math.max(1, WIDEST - name.length()));
        return "  %12s  %s%s%n"
                .formatted(amount, filled, String.join("; ", remarks))
                .replace("\r", "");
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
        return number(share.multiply(Rationals.of(100)), 1) + " %";
    }

    private static String number(RationalNumber value, int places) {
        return Rationals.rounded(value, places).toPlainString();
    }
}
