package org.misecue.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;
import org.misecue.episode.Choice;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;

/** What the editor changes in the film: the moment, what is heard or seen there, and what it should be. */
public final class FixList {

    /** One change. */
    public record Fix(Moment moment, String now, String then) {}

    private FixList() {}

    /** In the order of the films. */
    public static List<Fix> fixes(Docket docket) {
        return docket.matters().stream()
                .filter(matter -> matter.isToDo(Choice.COVER) || matter.isToDo(Choice.PICKUP))
                .flatMap(FixList::fixes)
                .sorted(Comparator.comparing((Fix fix) -> fix.moment().source())
                        .thenComparing(fix -> fix.moment().at()))
                .toList();
    }

    private static Stream<Fix> fixes(Matter matter) {
        Finding finding = matter.finding();
        return finding.evidence().stream()
                .filter(one -> Wrong.is(finding, one))
                .map(one -> new Fix(one.moment(), now(one), then(matter, one)));
    }

    private static String now(Evidence one) {
        return (one.via() == Evidence.Via.SHOWN ? "the card shows “" : "is said: “") + one.quote() + "”";
    }

    private static String then(Matter matter, Evidence one) {
        Finding finding = matter.finding();
        String right = RightWords.shown(finding);
        if (one.via() == Evidence.Via.SHOWN) {
            return right.isEmpty() ? "take the card out, or mend it by the recipe" : "card: “" + right + "”";
        }
        if (matter.isToDo(Choice.PICKUP)) {
            return "cut in the pick-up" + (right.isEmpty() ? "" : " for “" + right + "”");
        }
        return switch (finding.subject()) {
            case ADDED -> "lower third: “not in the written recipe”, or cut it out";
            case CLAIM -> "cut “" + finding.name() + "” out, or cover it";
            default -> "lower third: “" + right + "”";
        };
    }

    public static String of(Docket docket) {
        List<Fix> fixes = fixes(docket);
        List<String> out = new ArrayList<>();
        out.add("To change in the film: " + docket.title());
        if (fixes.isEmpty()) {
            out.add("");
            out.add("Nothing.");
        }
        String source = "";
        for (Fix fix : fixes) {
            if (!fix.moment().source().equals(source)) {
                source = fix.moment().source();
                out.add("");
                out.add(source);
            }
            out.add("%8s  %s".formatted(Clock.hms(fix.moment().at()), fix.now()));
            out.add("          → " + fix.then());
        }
        return String.join("\n", out) + "\n";
    }
}
