package org.misecue.shots;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The shot list.
 *
 * @param title the dish
 * @param shots in the order of the story, numbered from 1
 * @param method the text of each step by its number
 */
public record ShotPlan(String title, List<Shot> shots, Map<Integer, String> method) {

    /** The shots in one order or the other; their numbers stay. */
    public List<Shot> in(ShotOrder order) {
        return order == ShotOrder.STORY ? shots : FilmingOrder.of(shots);
    }

    /** The camera set-ups in order of first use, each with the numbers of its shots: what to film without moving. */
    public Map<String, List<Integer>> setups() {
        return shots.stream()
                .collect(Collectors.groupingBy(
                        Shot::setup, LinkedHashMap::new, Collectors.mapping(Shot::number, Collectors.toList())));
    }

    /** How often the camera moves to another set-up, in an order. */
    public int moves(ShotOrder order) {
        List<Shot> list = in(order);
        int moves = 0;
        for (int i = 1; i < list.size(); i++) {
            moves += list.get(i).setup().equals(list.get(i - 1).setup()) ? 0 : 1;
        }
        return moves;
    }
}
