package org.misecue.decide;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Optional;
import java.util.UUID;
import org.misecue.compare.Finding;
import org.misecue.episode.Decision;

/**
 * What somebody has before their eyes who decides, in a few signs that go along with the decision: if it is something else by
 * then, the decision is on something that nobody has seen.
 *
 * @param found changes with what is written, said and shown
 * @param decided changes with what was decided
 */
public record Seen(String found, String decided) {

    static Seen of(Finding finding, Optional<Decision> decision) {
        return new Seen(
                signs(finding.about() + Grounds.of(finding) + finding.reason()),
                decision.map(one -> signs(one.toString())).orElse("none"));
    }

    private static String signs(String text) {
        return UUID.nameUUIDFromBytes(text.getBytes(UTF_8)).toString().substring(0, 13);
    }

    /** As a form carries it. */
    @Override
    public String toString() {
        return found + "." + decided;
    }
}
