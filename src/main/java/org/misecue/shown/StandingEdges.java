package org.misecue.shown;

import org.misecue.footage.Grey;

/**
 * The edges of a film's small pictures that stay where they are while others come and go. Letters laid over a film are
 * such edges, whatever moves behind them; so is a table under a camera on a stand, which is why edges that have been
 * looked at are remembered and not looked at again.
 */
final class StandingEdges {

    /** Of 255, across two pixels: so steep an edge begins … */
    private static final int STEEP = 30;
    /** … and so steep it stays, for compression makes it flicker. */
    private static final int STILL_STEEP = 18;
    /** Pictures that an edge may miss. */
    private static final int MISSES = 1;
    /** Pictures after its first in which an edge was there too, before it stands. */
    private static final int STANDS = 2;
    /** An edge that was hidden for longer than so many pictures is looked at again. */
    private static final int FORGOTTEN = 75;

    private static final byte NONE = 0;
    private static final byte TO_RIGHT = 1;
    private static final byte TO_LEFT = 2;
    private static final byte DOWNWARDS = 3;
    private static final byte UPWARDS = 4;

    private final int width;
    private final int height;
    private final byte[] kind;
    private final byte[] missed;
    private final int[] since;
    private final byte[] known;
    private final int[] knownSeen;
    private int now = -1;

    StandingEdges(int width, int height) {
        this.width = width;
        this.height = height;
        int size = width * height;
        kind = new byte[size];
        missed = new byte[size];
        since = new int[size];
        known = new byte[size];
        knownSeen = new int[size];
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** How many pictures were seen before the last one. */
    int now() {
        return now;
    }

    /** Takes in the next picture. */
    void see(Grey picture) {
        now++;
        byte[] p = picture.pixels();
        for (int y = 1; y < height - 1; y++) {
            for (int i = y * width + 1; i < (y + 1) * width - 1; i++) {
                int across = (p[i + 1] & 0xff) - (p[i - 1] & 0xff);
                int down = (p[i + width] & 0xff) - (p[i - width] & 0xff);
                see(i, across, down);
            }
        }
    }

    private void see(int i, int across, int down) {
        if (kind[i] != NONE && !stays(i, across, down)) {
            kind[i] = NONE;
        }
        if (kind[i] == NONE && Math.max(Math.abs(across), Math.abs(down)) >= STEEP) {
            kind[i] = kindOf(across, down);
            since[i] = now;
            missed[i] = 0;
        }
        if (kind[i] != NONE && kind[i] == known[i]) {
            knownSeen[i] = now;
        }
    }

    private boolean stays(int i, int across, int down) {
        int steep =
                switch (kind[i]) {
                    case TO_RIGHT -> across;
                    case TO_LEFT -> -across;
                    case DOWNWARDS -> down;
                    default -> -down;
                };
        missed[i] = (byte) (steep >= STILL_STEEP ? 0 : missed[i] + 1);
        return missed[i] <= MISSES;
    }

    private static byte kindOf(int across, int down) {
        if (Math.abs(across) >= Math.abs(down)) {
            return across > 0 ? TO_RIGHT : TO_LEFT;
        }
        return down > 0 ? DOWNWARDS : UPWARDS;
    }

    /** Whether there is an edge of some kind now, for edges once taken with {@link #kind}. */
    boolean isThere(int i, byte as) {
        return kind[i] == as && missed[i] == 0;
    }

    byte kind(int i) {
        return kind[i];
    }

    /** 1 where it becomes lighter to the right, -1 where darker, 0 for edges that lie flat. */
    static int sideways(byte kind) {
        return kind == TO_RIGHT ? 1 : kind == TO_LEFT ? -1 : 0;
    }

    int sideways(int i) {
        return sideways(kind[i]);
    }

    int since(int i) {
        return since[i];
    }

    /** Whether an edge stands here that nobody has looked at yet. */
    boolean isNew(int i) {
        return kind[i] != NONE && now - since[i] >= STANDS && !isKnown(i);
    }

    /** Whether a new edge goes on to both sides, as those of strokes do; those of grain hardly ever do. */
    boolean isNewStroke(int i) {
        if (!isNew(i)) {
            return false;
        }
        int along = sideways(i) != 0 ? width : 1;
        int across = sideways(i) != 0 ? 1 : width;
        return goesOn(i - along, across, kind[i]) && goesOn(i + along, across, kind[i]);
    }

    private boolean goesOn(int next, int across, byte as) {
        return isOf(next, as) || isOf(next - across, as) || isOf(next + across, as);
    }

    private boolean isOf(int i, byte as) {
        return i >= 0 && i < kind.length && kind[i] == as;
    }

    /** An edge may lie a pixel aside of where it lay before. */
    private boolean isKnown(int i) {
        return knows(i, kind[i])
                || knows(i - 1, kind[i])
                || knows(i + 1, kind[i])
                || knows(i - width, kind[i])
                || knows(i + width, kind[i]);
    }

    private boolean knows(int i, byte as) {
        return known[i] == as && now - knownSeen[i] <= FORGOTTEN;
    }

    /** Remembers what stands in a box as looked at. */
    void remember(Box box) {
        for (int y = Math.max(1, box.top()); y < Math.min(height - 1, box.bottom()); y++) {
            for (int x = Math.max(1, box.left()); x < Math.min(width - 1, box.right()); x++) {
                int i = y * width + x;
                if (kind[i] != NONE) {
                    known[i] = kind[i];
                    knownSeen[i] = now;
                }
            }
        }
    }

    /** Has looked at again what stands in a box. */
    void forgetStanding(Box box) {
        for (int y = Math.max(0, box.top()); y < Math.min(height, box.bottom()); y++) {
            for (int x = Math.max(0, box.left()); x < Math.min(width, box.right()); x++) {
                int i = y * width + x;
                if (kind[i] != NONE && missed[i] == 0) {
                    known[i] = NONE;
                }
            }
        }
    }

    /** Has a box looked at again. */
    void forget(Box box) {
        for (int y = Math.max(0, box.top()); y < Math.min(height, box.bottom()); y++) {
            for (int x = Math.max(0, box.left()); x < Math.min(width, box.right()); x++) {
                known[y * width + x] = NONE;
            }
        }
    }
}
