package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import org.misecue.narration.Clock;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.Setting;

/** The comparison as plain text: what differs first, then what is only close, what is never said, and the rest in a line. */
public final class CompareText {

    private CompareText() {}

    public static String of(Comparison comparison) {
        List<String> out = new ArrayList<>();
        out.add(comparison.title());
        section(out, comparison, Verdict.DIFFERS, "Differs from the recipe");
        unwritten(out, comparison);
        section(out, comparison, Verdict.APPROXIMATE, "Close, but not as written: listen and decide");
        section(out, comparison, Verdict.UNSPOKEN, "Never said with an amount");
        section(out, comparison, Verdict.AGREES, "Said as written");
        return String.join("\n", out) + "\n";
    }

    private static void section(List<String> out, Comparison comparison, Verdict verdict, String heading) {
        List<String> rows = new ArrayList<>();
        for (LineVerdict line : comparison.written()) {
            if (line.verdict() == verdict) {
                rows.add("  " + line.line().text() + (line.component().isEmpty() ? "" : " (" + line.component() + ")"));
                details(rows, verdict, line.reason(), line.evidence());
            }
        }
        for (SettingVerdict setting : comparison.settings()) {
            if (setting.verdict() == verdict) {
                rows.add("  " + name(setting.setting()));
                details(rows, verdict, setting.reason(), setting.evidence());
            }
        }
        if (!rows.isEmpty()) {
            out.add("");
            out.add(heading);
            out.addAll(rows);
        }
    }

    private static void unwritten(List<String> out, Comparison comparison) {
        if (comparison.unwritten().isEmpty()) {
            return;
        }
        out.add("");
        out.add("Added on camera, not in the recipe");
        for (Unwritten one : comparison.unwritten()) {
            out.add("  " + one.ingredient() + ": " + QuantityWriter.text(one.quantity()));
            moments(out, one.evidence());
        }
    }

    private static void details(List<String> rows, Verdict verdict, String reason, List<Evidence> evidence) {
        if (verdict == Verdict.UNSPOKEN) {
            return;
        }
        if (verdict != Verdict.AGREES) {
            rows.add("      " + reason);
        }
        moments(rows, evidence);
    }

    private static void moments(List<String> rows, List<Evidence> evidence) {
        for (Evidence one : evidence) {
            rows.add("      " + Clock.hms(one.moment().at()) + "  “" + one.quote() + "”");
        }
    }

    /** How a setting is called for people: "Oven: 180 °C", "Bake: 45–50 minutes". */
    public static String name(Setting setting) {
        String figure = QuantityWriter.text(setting.quantity());
        String step = setting.step() == 0 ? "" : " (step " + setting.step() + ")";
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> "Oven: " + figure + step;
            case DURATION -> (setting.what().isEmpty() ? "Time" : capital(setting.what())) + ": " + figure + step;
            case PAN ->
                "Tin: " + (setting.count() > 1 ? setting.count() + " × " : "") + figure + " " + setting.what() + step;
            case YIELD -> "Makes: " + figure + " " + setting.what();
        };
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
