package org.misecue.bench;

import java.awt.Font;
import java.time.Duration;
import java.util.List;

/**
 * One invented card: what it says, how it looks and when it stands.
 *
 * @param height of a capital letter's line, as a share of the picture's height
 * @param x where the text begins or, centred, its middle, as a share of the width
 * @param y the first line's baseline, as a share of the height
 */
public record CardTruth(
        List<String> lines,
        Font font,
        Look look,
        double height,
        boolean centred,
        double x,
        double y,
        Duration from,
        Duration to) {

    /** How letters are set off from the picture. */
    public enum Look {
        LIGHT_ON_BOX,
        DARK_ON_BOX,
        LIGHT_ON_VEIL,
        OUTLINED,
        LIGHT_WITH_SHADOW
    }

    boolean at(Duration time) {
        return time.compareTo(from) >= 0 && time.compareTo(to) < 0;
    }
}
