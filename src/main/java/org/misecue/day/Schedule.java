package org.misecue.day;

import java.util.List;

/**
 * When each work of a project begins.
 *
 * @param starts minutes from the project's start, by the places of the works; below 0 for nothing
 * @param ovens which oven each stands in, from 0; −1 for none
 * @param pauses when each pause begins, in the order of the limits; −1 for one that falls away
 * @param end when the last work ends
 * @param proved whether no shorter day exists
 */
record Schedule(List<Integer> starts, List<Integer> ovens, List<Integer> pauses, int end, boolean proved) {}
