package org.misecue.shown;

/** A part of a picture, in pixels; right and bottom are just outside. */
record Box(int left, int top, int right, int bottom) {

    int width() {
        return right - left;
    }

    int height() {
        return bottom - top;
    }

    long area() {
        return isEmpty() ? 0 : (long) width() * height();
    }

    boolean isEmpty() {
        return right <= left || bottom <= top;
    }

    boolean contains(int x, int y) {
        return x >= left && x < right && y >= top && y < bottom;
    }

    boolean meets(Box other) {
        return !and(other).isEmpty();
    }

    Box and(Box other) {
        return new Box(
                Math.max(left, other.left),
                Math.max(top, other.top),
                Math.min(right, other.right),
                Math.min(bottom, other.bottom));
    }

    /** The smallest that holds both. */
    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    Box grown(int across, int down) {
        return new Box(left - across, top - down, right + across, bottom + down);
    }

    /** The same part of the same picture in another size. */
    Box times(double factor) {
        return new Box(
                (int) Math.floor(left * factor), (int) Math.floor(top * factor), (int) Math.ceil(right * factor), (int)
                        Math.ceil(bottom * factor));
    }

    Box movedBy(int x, int y) {
        return new Box(left + x, top + y, right + x, bottom + y);
    }
}
