package org.misecue.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;

/**
 * Everything that has to be decided before the film and its recipe go out, in the order of the findings.
 *
 * @param title of the recipe
 * @param matters each finding that is open to decision
 * @param done decisions whose matter is gone, because what differed does not differ any more
 */
public record Docket(String title, List<Matter> matters, List<Decision> done) {

    public static Docket of(Findings findings, List<Decision> decisions) {
        Map<String, Decision> left = new LinkedHashMap<>();
        decisions.forEach(one -> left.put(one.about(), one));
        List<Matter> matters = new ArrayList<>();
        for (Findings.Group group : findings.groups()) {
            if (group.kind().isOpen()) {
                for (Finding finding : group.findings()) {
                    Optional<Decision> decision = Optional.ofNullable(left.remove(finding.about()));
                    matters.add(new Matter(group.kind(), finding, state(finding, decision), decision));
                }
            }
        }
        return new Docket(findings.title(), List.copyOf(matters), List.copyOf(left.values()));
    }

    private static State state(Finding finding, Optional<Decision> decision) {
        if (decision.isEmpty()) {
            return State.UNDECIDED;
        }
        Decision taken = decision.get();
        if (!Grounds.stillHold(taken, finding)) {
            return State.STALE;
        }
        boolean covered = taken.choice() == Choice.COVER && Grounds.isCovered(finding);
        return taken.choice() == Choice.KEEP || covered ? State.SETTLED : State.TO_DO;
    }

    /** What somebody still has to decide on. */
    public List<Matter> undecided() {
        return matters.stream().filter(one -> one.state().isOpen()).toList();
    }

    /** What differs and is undecided. */
    public List<Matter> differing() {
        return undecided().stream().filter(one -> one.kind().differs()).toList();
    }

    /** What keeps the recipe from being published. */
    public List<Matter> blocking() {
        return matters.stream().filter(Matter::blocks).toList();
    }

    /** What is decided and not done yet. */
    public List<Matter> toDo() {
        return matters.stream().filter(one -> one.state() == State.TO_DO).toList();
    }

    /** Whether nothing is left to decide or to do. */
    public boolean isClean() {
        return matters.stream().allMatch(one -> one.state() == State.SETTLED);
    }
}
