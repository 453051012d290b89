package org.misecue.shown;

/**
 * A line as it was read from a picture.
 *
 * @param box where it is in that picture
 * @param sure from 0 to 100, as the recogniser tells for its words
 */
record ReadLine(Box box, String text, boolean doubtful, int sure) {

    ReadLine at(Box place) {
        return new ReadLine(place, text, doubtful, sure);
    }

    ReadLine doubted() {
        return new ReadLine(box, text, true, sure);
    }
}
