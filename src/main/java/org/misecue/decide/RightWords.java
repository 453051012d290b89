package org.misecue.decide;

import java.util.Locale;
import org.misecue.compare.Finding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;

/** What ought to be said or shown for a finding, as the recipe has it. */
final class RightWords {

    private RightWords() {}

    /** A sentence to be spoken, numbers as words: "A hundred and seventy-five grams of unsalted butter." */
    static String spoken(Finding finding) {
        return finding.written()
                .map(amount -> sentence(finding, amount))
                .map(text -> text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".")
                .orElse("");
    }

    private static String sentence(Finding finding, Quantity amount) {
        String words = QuantityWriter.words(amount);
        return switch (finding.subject()) {
            case LINE ->
                amount.unit() == Unit.EACH
                        ? words + " " + plural(amount, finding.name())
                        : words + " of " + finding.name();
            case OVEN -> "the oven is at " + words;
            case TIME -> finding.name() + " for " + words;
            case TIN -> "the tin is " + words + ": " + afterColon(finding.what());
            case YIELD -> "it makes " + words + afterAmount(finding.what(), amount);
            case ADDED, SHOWN, CLAIM -> words;
        };
    }

    /** The line of a card: what is written, in figures. */
    static String shown(Finding finding) {
        return finding.written().isPresent() ? finding.what() : "";
    }

    private static String plural(Quantity amount, String name) {
        boolean one =
                amount.amount().most().stream().allMatch(most -> most.toString().equals("1"));
        return one || name.endsWith("s") ? name : name + "s";
    }

    private static String afterColon(String what) {
        int colon = what.indexOf(": ");
        return colon < 0 ? what : what.substring(colon + 2);
    }

    private static String afterAmount(String what, Quantity amount) {
        String text = afterColon(what);
        String figure = QuantityWriter.text(amount);
        return text.startsWith(figure) ? text.substring(figure.length()) : "";
    }
}
