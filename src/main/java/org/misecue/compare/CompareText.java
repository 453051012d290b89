package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.misecue.compare.Findings.Group;
import org.misecue.compare.Findings.Kind;
import org.misecue.narration.Clock;

/** The findings as plain text, in the order of the page. */
public final class CompareText {

    private CompareText() {}

    /** @param decisions what was decided, by what it is about; a finding that has none is undecided */
    public static String of(Findings findings, Map<String, String> decisions) {
        List<String> out = new ArrayList<>();
        out.add(findings.title());
        out.add(findings.summary());
        findings.undecided(decisions.keySet()).ifPresent(out::add);
        for (Group group : findings.groups()) {
            out.add("");
            out.add(group.kind().heading());
            group.findings().forEach(finding -> finding(out, group.kind(), finding, decisions));
        }
        if (!findings.heardOtherwise().isEmpty()) {
            out.add("");
            out.add("Corrected by ear");
            findings.heardOtherwise().forEach(words -> out.add("  " + words));
        }
        if (!findings.source().isEmpty()) {
            out.add("");
            out.add(findings.source());
        }
        return String.join("\n", out) + "\n";
    }

    private static void finding(List<String> out, Kind kind, Finding finding, Map<String, String> decisions) {
        String where = finding.where().isEmpty() ? "" : " (" + finding.where() + ")";
        out.add("  " + finding.what() + where + verdict(kind, finding));
        if (kind.isOpen()) {
            out.add("      " + finding.reason());
        }
        if (!finding.caution().isEmpty()) {
            out.add("      " + finding.caution());
        }
        for (Evidence one : finding.evidence()) {
            String shown = one.via() == Evidence.Via.SHOWN ? "on screen " : "";
            out.add("      " + Clock.hms(one.moment().at()) + "  " + shown + "“" + one.quote() + "”");
        }
        String decided = decisions.get(finding.about());
        if (decided != null) {
            out.add("      Decided: " + decided);
        }
    }

    /** Only where the heading does not say it. */
    private static String verdict(Kind kind, Finding finding) {
        String word = kind == Kind.LISTEN ? " – " + finding.verdict() : "";
        return finding.confidence().isLow() ? (word.isEmpty() ? " – " : word + ", ") + "uncertain" : word;
    }
}
