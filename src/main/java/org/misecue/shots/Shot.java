package org.misecue.shots;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One shot of the list. What belongs to no step has step 0 and is told apart by its place in the story: before the first
 * shot of a step it opens the film (kitchen, welcome, line-up), after it it closes it (the reveal), and no such shot
 * stands between steps. The kind does not tell this, for there are pickups at both ends. A pickup
 * may be left out, or filmed later from food like that of its step; what names it in {@code after} then comes after what
 * the pickup itself comes after.
 *
 * @param number from 1, in the order of the story; the same in every order it is filmed in
 * @param step the step it shows first; 0 for what belongs to no step
 * @param laterSteps other steps that the same shot covers
 * @param technique the key of its template's technique
 * @param kind what it is for
 * @param setup the camera set-up
 * @param camera where the camera stands
 * @param see what must be seen
 * @param hands what the hands do; empty where it does not matter
 * @param bowls the numbers of the bowls that must stand ready
 * @param sound what to listen for
 * @param sayings what the presenter must say: quantities and settings in words
 * @param lowerThird what to show in writing; empty for nothing
 * @param takes how often to film it; where food goes in, as often as there are sets of bowls
 * @param oneChance whether it cannot be repeated with the same food
 * @param hazards reminders for the people on set
 * @param after the shots that must be filmed before it; what those come after is not repeated
 */
public record Shot(
        int number,
        int step,
        List<Integer> laterSteps,
        String technique,
        ShotKind kind,
        String setup,
        String camera,
        String see,
        String hands,
        List<Integer> bowls,
        String sound,
        List<Saying> sayings,
        String lowerThird,
        int takes,
        boolean oneChance,
        List<Hazard> hazards,
        List<Integer> after) {

    /** What must be said, in one line; empty for nothing. */
    public String say() {
        return Sayings.line(sayings);
    }

    /** The slate of each take: "7 take 1". */
    public List<String> slates() {
        return IntStream.rangeClosed(1, takes)
                .mapToObj(take -> number + " take " + take)
                .toList();
    }
}
