package org.misecue.shots;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.misecue.prep.Wording;

/**
 * The list as people read it: under the sentence of each step in the order of the story, under the set-up in the order of
 * filming. A hazard is told in full where it comes first; later its name is enough.
 */
public record ShotSheet(String title, String summary, List<Group> groups) {

    /** @param text what stands under the heading; may be empty */
    public record Group(String heading, String text, List<Row> rows) {}

    /**
     * @param hazards those told here for the first time
     * @param known those told before: "oven door (see shot 4)"; empty for none
     */
    public record Row(Shot shot, List<Hazard> hazards, String known) {}

    public static ShotSheet of(ShotPlan plan, ShotOrder order) {
        List<Group> groups = new ArrayList<>();
        Map<Hazard, Integer> told = new LinkedHashMap<>();
        String last = "";
        List<Hazard> before = List.of();
        for (Shot shot : plan.in(order)) {
            String heading = heading(shot, order);
            if (groups.isEmpty() || !heading.equals(last)) {
                String text = order == ShotOrder.STORY ? plan.method().getOrDefault(shot.step(), "") : "";
                groups.add(new Group(Wording.upperFirst(heading), text, new ArrayList<>()));
                last = heading;
            }
            groups.get(groups.size() - 1).rows().add(row(shot, told, before));
            before = shot.hazards();
        }
        return new ShotSheet(plan.title(), summary(plan, order), groups);
    }

    private static String heading(Shot shot, ShotOrder order) {
        if (order == ShotOrder.FILMING) {
            return shot.setup();
        }
        if (shot.step() > 0) {
            return "step " + shot.step();
        }
        return shot.kind() == ShotKind.REVEAL || shot.technique().equals(ShotTemplates.REVEAL) ? "reveal" : "opening";
    }

    /** @param before the hazards of the shot before, which go without saying */
    private static Row row(Shot shot, Map<Hazard, Integer> told, List<Hazard> before) {
        List<Hazard> fresh = new ArrayList<>();
        List<String> names = new ArrayList<>();
        TreeSet<Integer> where = new TreeSet<>();
        for (Hazard hazard : shot.hazards()) {
            Integer first = told.putIfAbsent(hazard, shot.number());
            if (first == null) {
                fresh.add(hazard);
            } else if (!before.contains(hazard)) {
                names.add(hazard.what());
                where.add(first);
            }
        }
        String known =
                names.isEmpty() ? "" : Wording.list(names) + " (see " + ShotWords.shots(List.copyOf(where)) + ")";
        return new Row(shot, fresh, known);
    }

    private static String summary(ShotPlan plan, ShotOrder order) {
        long pickups = plan.shots().stream()
                .filter(shot -> shot.kind() == ShotKind.PICKUP)
                .count();
        long once = plan.shots().stream().filter(Shot::oneChance).count();
        return Wording.count(plan.shots().size() - pickups, "shot")
                + " and " + Wording.count(pickups, "pickup")
                + ", " + once + " of them with one chance; in "
                + (order == ShotOrder.STORY ? "the order of the story" : "the order of filming")
                + " the camera moves to another set-up " + plan.moves(order) + " times";
    }
}
