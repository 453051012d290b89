package org.misecue.shots;

import java.util.Optional;

/**
 * One shot of a technique, before a recipe fills it in.
 *
 * @param setup the name of the camera set-up; shots of one name are lit and filmed together
 * @param camera where the camera stands and how tight the frame is
 * @param see what must be seen; may hold {@code {ingredients}} and {@code {amounts}}
 * @param hands what the hands do; empty where it does not matter
 * @param sound what to listen for, and when to speak
 * @param lowerThird what the editor would like to show in writing; may hold the same as {@code see}
 * @param takes how often to film it where no food is used up, 1 to 9
 * @param oneChance whether it cannot be repeated with the same food
 */
public record Coverage(
        String setup,
        String camera,
        String see,
        String hands,
        String sound,
        Optional<String> lowerThird,
        int takes,
        boolean oneChance) {}
