package org.misecue.shots;

import java.util.Optional;

/**
 * One shot of a technique, before a recipe fills it in. The texts of {@code see}, {@code hands} and {@code lowerThird}
 * may hold {@link Blanks}.
 *
 * @param kind what it is for
 * @param only when it is filmed
 * @param early whether it may be filmed earlier than its place, because the state of the food does not matter
 * @param setup the name of the camera set-up; shots of one name are lit and filmed together
 * @param camera where the camera stands and how tight the frame is
 * @param see what must be seen
 * @param hands what the hands do, and what must be as it was in the shot before; empty where it does not matter
 * @param sound what to listen for, and when to speak
 * @param lowerThird what the editor shows in writing
 * @param takes how often to film it where no food is used up, 1 to 9
 * @param oneChance whether it cannot be repeated with the same food
 */
record Coverage(
        ShotKind kind,
        Only only,
        boolean early,
        String setup,
        String camera,
        String see,
        String hands,
        String sound,
        Optional<String> lowerThird,
        int takes,
        boolean oneChance) {}
