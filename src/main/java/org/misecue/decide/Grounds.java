package org.misecue.decide;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.misecue.compare.Evidence;
import org.misecue.compare.Finding;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;

/**
 * What a decision rests on: the written amount and the words that were said and shown, but not when, so that a film that
 * is cut anew keeps its decisions as long as the same is said.
 */
final class Grounds {

    private Grounds() {}

    static List<String> of(Finding finding) {
        Stream<String> written = finding.written().stream().map(amount -> "written: " + QuantityWriter.text(amount));
        Stream<String> told =
                finding.evidence().stream().map(Grounds::told).sorted().distinct();
        return Stream.concat(written, told).toList();
    }

    private static String told(Evidence one) {
        String amount = one.quantity().map(QuantityWriter::text).orElse("");
        String words = one.deciding().isEmpty() ? one.quote() : one.deciding();
        return "%s: %s “%s”".formatted(one.via().code(), amount, words).replaceAll(" {2,}", " ");
    }

    /** Whether the decision still rests on what is there. A right card that now covers what was said is no change. */
    static boolean stillHold(Decision decision, Finding finding) {
        Set<String> now = new TreeSet<>(of(finding));
        Set<String> then = new TreeSet<>(decision.restsOn());
        if (decision.choice() == Choice.COVER) {
            covering(finding)
                    .map(Grounds::told)
                    .filter(card -> !then.contains(card))
                    .forEach(now::remove);
        }
        return now.equals(then);
    }

    /** Whether a card shows the written amount, in words that can be relied on. */
    static boolean isCovered(Finding finding) {
        return covering(finding).findAny().isPresent();
    }

    private static Stream<Evidence> covering(Finding finding) {
        Optional<Quantity> written = finding.written();
        return finding.evidence().stream()
                .filter(one -> one.via() == Evidence.Via.SHOWN && !one.doubtful())
                .filter(one -> written.isPresent() && one.quantity().equals(written));
    }
}
