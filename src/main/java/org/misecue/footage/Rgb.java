package org.misecue.footage;

/**
 * A picture in colour.
 *
 * @param pixels red, green and blue of each, row by row; not copied
 */
@SuppressWarnings("ArrayRecordComponent") // pictures are passed on, never compared
record Rgb(int width, int height, byte[] pixels) {}
