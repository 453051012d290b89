package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import org.misecue.compare.Findings.Group;
import org.misecue.compare.Findings.Kind;
import org.misecue.narration.Clock;

/** The findings as plain text, in the order of the page. */
public final class CompareText {

    private CompareText() {}

    public static String of(Findings findings) {
        List<String> out = new ArrayList<>();
        out.add(findings.title());
        out.add(findings.summary());
        for (Group group : findings.groups()) {
            out.add("");
            out.add(group.kind().heading());
            group.findings().forEach(finding -> finding(out, group.kind(), finding));
        }
        if (findings.hasCautions()) {
            out.add("");
            out.add(AllergenCaution.SOURCE);
        }
        return String.join("\n", out) + "\n";
    }

    private static void finding(List<String> out, Kind kind, Finding finding) {
        String where = finding.where().isEmpty() ? "" : " (" + finding.where() + ")";
        out.add("  " + finding.what() + where + verdict(kind, finding));
        if (kind.isOpen()) {
            out.add("      " + finding.reason());
        }
        if (!finding.caution().isEmpty()) {
            out.add("      " + finding.caution());
        }
        for (Evidence one : finding.evidence()) {
            out.add("      " + Clock.hms(one.moment().at()) + "  “" + one.quote() + "”");
        }
    }

    /** Only where the heading does not say it. */
    private static String verdict(Kind kind, Finding finding) {
        String word = kind == Kind.LISTEN ? " – " + finding.verdict() : "";
        return finding.confidence().isLow() ? (word.isEmpty() ? " – " : word + ", ") + "uncertain" : word;
    }
}
