package org.misecue.footage;

/**
 * A picture in shades of grey.
 *
 * @param pixels one byte each, row by row, from 0 for black to 255 for white; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, and a copy of each frame would cost more than the rest
public record Grey(int width, int height, byte[] pixels) {

    public int at(int x, int y) {
        return pixels[y * width + x] & 0xff;
    }
}
