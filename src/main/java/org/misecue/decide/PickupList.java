package org.misecue.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.narration.Clock;
import org.misecue.quantity.QuantityWriter;

/** What the presenter films again: the exact sentence, and the words that it goes in place of. */
public final class PickupList {

    private PickupList() {}

    public static String of(Docket docket) {
        List<Matter> pickups = docket.matters().stream()
                .filter(matter -> matter.isToDo(Choice.PICKUP))
                .toList();
        List<String> out = new ArrayList<>();
        out.add("Pick-ups: " + docket.title());
        if (pickups.isEmpty()) {
            out.add("");
            out.add("None are wanted.");
        }
        for (int i = 0; i < pickups.size(); i++) {
            out.add("");
            pickup(out, i + 1, pickups.get(i));
        }
        return String.join("\n", out) + "\n";
    }

    private static void pickup(List<String> out, int number, Matter matter) {
        Finding finding = matter.finding();
        String where = finding.where().isEmpty() ? "" : " (" + finding.where() + ")";
        out.add(number + ". " + finding.what() + where);
        out.add("   Say:  " + line(finding));
        List<Evidence> spoken = finding.evidence().stream()
                .filter(one -> one.via() == Evidence.Via.SPOKEN && Wrong.is(finding, one))
                .toList();
        for (Evidence one : spoken) {
            out.add("   In place of, at " + Clock.hms(one.moment().at()) + " of "
                    + one.moment().source() + ":");
            out.add("         “" + one.quote() + "”");
            asItStands(finding, one)
                    .ifPresent(words -> out.add("   Or the same with the right words:\n         “" + words + "”"));
        }
        if (spoken.isEmpty()) {
            out.add("   It is said nowhere yet.");
        }
        if (!finding.caution().isEmpty()) {
            out.add("   " + finding.caution());
        }
        matter.decision()
                .map(Decision::note)
                .filter(note -> !note.isEmpty())
                .ifPresent(note -> out.add("   Note: " + note));
    }

    /** What was said with the written amount in it, so that the cut can be anywhere in the sentence. */
    private static Optional<String> asItStands(Finding finding, Evidence one) {
        int at = one.quote().indexOf(one.deciding());
        return finding.written()
                .filter(amount -> at >= 0 && !one.deciding().isEmpty())
                .map(amount -> one.quote().substring(0, at)
                        + QuantityWriter.words(amount)
                        + one.quote().substring(at + one.deciding().length()));
    }

    private static String line(Finding finding) {
        return switch (finding.subject()) {
            case ADDED -> "the same without the " + finding.what() + "; no line of the recipe has it.";
            case SHOWN -> "nothing new; the card “" + finding.name() + "” is the matter.";
            case CLAIM -> "the same without “" + finding.name() + "”.";
            default -> "“" + RightWords.spoken(finding) + "”";
        };
    }
}
