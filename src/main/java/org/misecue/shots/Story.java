package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The shots in the order of the story. What shows nothing new joins an earlier shot: an action that goes on in the next
 * step without anything going in, and a pickup of a technique that has one already.
 */
final class Story {

    private final List<Draft> drafts = new ArrayList<>();
    private int lastAction;

    void add(Draft draft) {
        drafts.add(draft);
        lastAction = drafts.size();
    }

    /** All shots of one action. */
    void add(List<Draft> action) {
        int before = lastAction;
        int start = drafts.size();
        for (Draft draft : action) {
            int from = draft.coverage().kind() == ShotKind.PICKUP ? 0 : draft.fed() ? start : before;
            int same = IntStream.range(from, start)
                    .filter(i -> drafts.get(i).coverage().equals(draft.coverage()))
                    .filter(i -> drafts.get(i).template().equals(draft.template()))
                    .findFirst()
                    .orElse(-1);
            if (same >= 0) {
                drafts.set(same, drafts.get(same).joinedBy(draft));
            } else {
                drafts.add(draft);
            }
        }
        lastAction = drafts.size() > start ? start : before;
    }

    /**
     * Numbered from 1, each with what must be filmed before it: the shot before it and what may have been filmed even
     * earlier. The dial of the oven is not turned before what is in it has come out.
     */
    List<Shot> shots() {
        List<Shot> shots = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        List<Integer> oven = List.of();
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            boolean atOven = SettingPlaces.OVENS.contains(draft.template().technique());
            if (draft.coverage().early()) {
                shots.add(draft.numbered(i + 1, atOven ? oven : List.of()));
                open.add(i + 1);
            } else {
                shots.add(draft.numbered(i + 1, List.copyOf(open)));
                open.clear();
                open.add(i + 1);
            }
            oven = atOven ? List.of(i + 1) : oven;
        }
        return List.copyOf(shots);
    }
}
