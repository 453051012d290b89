package org.misecue.shown;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.misecue.footage.Grey;

/**
 * A part of the picture as it is given to be read.
 *
 * @param pictures the same part at moments between which the writing stayed; at least one
 * @param letter about how high a small letter is, in pixels
 * @param grain how many pixels a pixel of the small picture covers
 * @param strokes the edges that stand
 */
record Exposure(List<Grey> pictures, double letter, double grain, Strokes strokes) {

    /**
     * Edges that stand.
     *
     * @param across from the left, in pixels of the part
     * @param down from the top
     * @param sideways 1 for the side of a stroke where it becomes lighter to the right, -1 where darker, 0 for tops and
     *     feet
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Strokes(double[] across, double[] down, int[] sideways) {

        int count() {
            return across.length;
        }

        boolean isIn(int i, Box box) {
            return box.contains((int) across[i], (int) down[i]);
        }
    }

    /** How dark letters are and how light the ground next to them. */
    record Levels(int ink, int ground) {

        int contrast() {
            return ground - ink;
        }

        /** With only a share of the contrast, so that less is taken for letters. */
        Levels nearer(double share) {
            return new Levels(ink, ink + (int) (share * contrast()));
        }
    }

    /** Of the levels beside edges the most usual, rather darker: what is near letters matters, not the lightest. */
    private static final double SHARE = 0.3;

    /** The levels beside those edges that are in a box of a picture of this size with dark letters. */
    Levels levels(Grey picture, Box in) {
        int[] spots = IntStream.range(0, strokes.count())
                .filter(i -> strokes.isIn(i, in))
                .toArray();
        if (spots.length == 0) {
            return new Levels(0, 255);
        }
        int[] inks = new int[spots.length];
        int[] grounds = new int[spots.length];
        for (int k = 0; k < spots.length; k++) {
            Levels beside = beside(picture, (int) strokes.across()[spots[k]], (int) strokes.down()[spots[k]]);
            inks[k] = beside.ink();
            grounds[k] = beside.ground();
        }
        Arrays.sort(inks);
        Arrays.sort(grounds);
        int at = (int) (SHARE * spots.length);
        return new Levels(inks[at], grounds[at]);
    }

    /** The darkest and the lightest around a point. */
    private Levels beside(Grey picture, int x, int y) {
        int reach = (int) Math.ceil(grain) + 1;
        Box near = new Box(x, y, x + 1, y + 1).grown(reach, reach).and(whole());
        int ink = 255;
        int ground = 0;
        for (int row = near.top(); row < near.bottom(); row++) {
            for (int column = near.left(); column < near.right(); column++) {
                ink = Math.min(ink, picture.at(column, row));
                ground = Math.max(ground, picture.at(column, row));
            }
        }
        return new Levels(ink, ground);
    }

    Box whole() {
        return new Box(0, 0, pictures.get(0).width(), pictures.get(0).height());
    }
}
