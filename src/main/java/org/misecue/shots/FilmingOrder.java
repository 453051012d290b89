package org.misecue.shots;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The order to film in: as long as a shot of the set-up that stands is possible, it is next; otherwise the first that is
 * possible. Possible is a shot whose {@link Shot#after} are all filmed, so that no result is shown before its steps.
 */
final class FilmingOrder {

    private FilmingOrder() {}

    static List<Shot> of(List<Shot> story) {
        List<Shot> left = new ArrayList<>(story);
        List<Shot> filmed = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        while (!left.isEmpty()) {
            List<Shot> possible =
                    left.stream().filter(shot -> done.containsAll(shot.after())).toList();
            String setup = filmed.isEmpty() ? "" : filmed.get(filmed.size() - 1).setup();
            Shot next = possible.stream()
                    .filter(shot -> shot.setup().equals(setup))
                    .findFirst()
                    .orElse(possible.get(0));
            filmed.add(next);
            done.add(next.number());
            left.remove(next);
        }
        return List.copyOf(filmed);
    }
}
