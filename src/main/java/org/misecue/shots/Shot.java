package org.misecue.shots;

import java.util.List;

/**
 * One shot of the list.
 *
 * @param number from 1
 * @param step the step it shows first; 0 for the line-up and the reveal
 * @param laterSteps other steps that the same shot covers
 * @param technique the key of its template's technique
 * @param setup the camera set-up
 * @param camera where the camera stands
 * @param see what must be seen
 * @param hands what the hands do; empty where it does not matter
 * @param bowls the numbers of the bowls that must stand ready
 * @param sound what to listen for
 * @param say what the presenter must say: quantities and settings in words; empty where nothing
 * @param lowerThird what to show in writing; empty for nothing
 * @param takes how often to film it; where food goes in, as often as there are sets of bowls
 * @param oneChance whether it cannot be repeated with the same food
 * @param hazards reminders for the people on set
 */
public record Shot(
        int number,
        int step,
        List<Integer> laterSteps,
        String technique,
        String setup,
        String camera,
        String see,
        String hands,
        List<Integer> bowls,
        String sound,
        String say,
        String lowerThird,
        int takes,
        boolean oneChance,
        List<String> hazards) {

    Shot numbered(int newNumber) {
        return new Shot(
                newNumber,
                step,
                laterSteps,
                technique,
                setup,
                camera,
                see,
                hands,
                bowls,
                sound,
                say,
                lowerThird,
                takes,
                oneChance,
                hazards);
    }

    Shot covering(List<Integer> alsoSteps) {
        return new Shot(
                number,
                step,
                alsoSteps,
                technique,
                setup,
                camera,
                see,
                hands,
                bowls,
                sound,
                say,
                lowerThird,
                takes,
                oneChance,
                hazards);
    }

    /** Whether the other shot would show nothing new: same action, frame and picture, nothing going in, nothing to say. */
    boolean shows(Shot other) {
        return technique.equals(other.technique)
                && setup.equals(other.setup)
                && camera.equals(other.camera)
                && see.equals(other.see)
                && other.bowls.isEmpty()
                && other.say.isEmpty();
    }
}
