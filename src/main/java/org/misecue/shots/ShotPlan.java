package org.misecue.shots;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The shot list.
 *
 * @param title the dish
 * @param shots in the order of the method, numbered from 1
 */
public record ShotPlan(String title, List<Shot> shots) {

    /** The camera set-ups in order of first use, each with the numbers of its shots: what to film without moving. */
    public Map<String, List<Integer>> setups() {
        return shots.stream()
                .collect(Collectors.groupingBy(
                        Shot::setup, LinkedHashMap::new, Collectors.mapping(Shot::number, Collectors.toList())));
    }
}
