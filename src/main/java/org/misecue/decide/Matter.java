package org.misecue.decide;

import java.time.LocalDateTime;
import java.util.Optional;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;

/**
 * One thing to be decided.
 *
 * @param decision the one that was taken, stale ones included
 */
public record Matter(Findings.Kind kind, Finding finding, State state, Optional<Decision> decision) {

    public String about() {
        return finding.about();
    }

    /** Whether it keeps the recipe from being published: what differs and is undecided, and what is to be mended in it. */
    public boolean blocks() {
        boolean unfixed = state == State.TO_DO
                && decision.filter(one -> one.choice() == Choice.FIX).isPresent();
        return kind.differs() && (state.isOpen() || unfixed);
    }

    /** A decision on it that rests on what is there now. */
    public Decision decided(Choice choice, String who, LocalDateTime when, String note) {
        return new Decision(about(), choice, who, when, note, Grounds.of(finding));
    }

    /** What somebody has seen of it who decides. */
    public Seen seen() {
        return seen(decision);
    }

    /** What they would see with another decision on it. */
    public Seen seen(Optional<Decision> other) {
        return Seen.of(finding, other);
    }

    boolean isToDo(Choice choice) {
        return state == State.TO_DO
                && decision.filter(one -> one.choice() == choice).isPresent();
    }
}
