package org.misecue.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Stretch;
import org.misecue.recipe.Wait;
import org.misecue.shots.Shot;
import org.misecue.shots.ShotPlan;

/** Gives each shot of the list to the stretch of work that it shows. */
final class ShotsOfStretches {

    private static final String BAKE = "bake";
    private static final Set<String> AFTERWARDS = Set.of("cool", "unmould", "chill");

    private final Map<Integer, List<Shot>> during = new HashMap<>();
    private final Map<Integer, List<Shot>> out = new HashMap<>();
    private final List<Shot> before = new ArrayList<>();
    private final List<Shot> after = new ArrayList<>();

    ShotsOfStretches(MethodOrder order, ShotPlan plan) {
        boolean begun = false;
        for (Shot shot : plan.shots()) {
            if (shot.step() == 0) {
                (begun ? after : before).add(shot);
                continue;
            }
            begun = true;
            int at = stretch(order, shot);
            (comesOut(order.stretches().get(at), shot, at) ? out : during)
                    .computeIfAbsent(at, any -> new ArrayList<>())
                    .add(shot);
        }
    }

    /** Of a bake, the tin going in is filmed before, and all else when it comes out: the colour, the cooling on a rack. */
    private boolean comesOut(Stretch stretch, Shot shot, int at) {
        boolean bakes = stretch.waits().stream().anyMatch(wait -> wait.where() == Wait.Where.OVEN);
        boolean goneIn = during.getOrDefault(at, List.of()).stream()
                .anyMatch(other -> other.technique().equals(BAKE));
        return bakes && goneIn && (shot.technique().equals(BAKE) || AFTERWARDS.contains(shot.technique()));
    }

    /** The first of the step's stretches that has the technique, or the first. */
    private static int stretch(MethodOrder order, Shot shot) {
        List<Integer> places = order.of(shot.step());
        return places.stream()
                .filter(at -> has(order.stretches().get(at), shot.technique()))
                .findFirst()
                .or(() -> places.stream().findFirst())
                .orElse(0);
    }

    private static boolean has(Stretch stretch, String technique) {
        return stretch.techniques().contains(technique);
    }

    /** Filmed while hands are at work. */
    List<Shot> of(int stretch) {
        return during.getOrDefault(stretch, List.of());
    }

    /** Filmed when it comes out of the oven. */
    List<Shot> out(int stretch) {
        return out.getOrDefault(stretch, List.of());
    }

    /** Those of no step that stand before the method: the line-up. */
    List<Shot> before() {
        return before;
    }

    /** Those of no step behind it: the reveal. */
    List<Shot> after() {
        return after;
    }
}
