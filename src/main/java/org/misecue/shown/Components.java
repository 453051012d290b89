package org.misecue.shown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.misecue.footage.Grey;

/** Pieces of ink that hang together, in a picture of black and white. */
final class Components {

    private Components() {}

    /** A piece with its points, as places in the picture's pixels. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Piece(Box box, int[] points, int pictureWidth) {

        /** The piece alone, black on white, with some room around. */
        Grey alone(int room) {
            return together(List.of(this), room);
        }

        int area() {
            return points.length;
        }

        /** How well its points lie on a line that rises to the right, from 0 to 1. */
        double rises() {
            double n = points.length;
            double sx = 0;
            double sy = 0;
            double sxx = 0;
            double syy = 0;
            double sxy = 0;
            for (int point : points) {
                double x = point % pictureWidth;
                double y = point / pictureWidth;
                sx += x;
                sy += y;
                sxx += x * x;
                syy += y * y;
                sxy += x * y;
            }
            double across = sxx - sx * sx / n;
            double down = syy - sy * sy / n;
            double both = sxy - sx * sy / n;
            return across == 0 || down == 0 ? 0 : Math.max(0, -both / Math.sqrt(across * down));
        }
    }

    /** Several pieces of one picture, without the others. */
    static Grey together(List<Piece> pieces, int room) {
        Box box =
                pieces.stream().map(Piece::box).reduce(Box::with).orElseThrow().grown(room, room);
        byte[] pixels = new byte[box.width() * box.height()];
        Arrays.fill(pixels, (byte) 255);
        for (Piece piece : pieces) {
            for (int point : piece.points()) {
                int x = point % piece.pictureWidth() - box.left();
                int y = point / piece.pictureWidth() - box.top();
                pixels[y * box.width() + x] = 0;
            }
        }
        return new Grey(box.width(), box.height(), pixels);
    }

    /** All pieces, also those that touch by a corner only, from left to right. */
    static List<Piece> of(Grey blackAndWhite) {
        boolean[] seen = new boolean[blackAndWhite.pixels().length];
        int[] points = new int[seen.length];
        List<Piece> pieces = new ArrayList<>();
        for (int start = 0; start < seen.length; start++) {
            if (blackAndWhite.pixels()[start] == 0 && !seen[start]) {
                pieces.add(piece(blackAndWhite, seen, points, start));
            }
        }
        pieces.sort(Comparator.comparingInt(piece -> piece.box().left()));
        return pieces;
    }

    /** @param points room for all points of the picture */
    private static Piece piece(Grey picture, boolean[] seen, int[] points, int start) {
        int width = picture.width();
        seen[start] = true;
        points[0] = start;
        int found = 1;
        int left = width;
        int right = 0;
        int bottom = 0;
        for (int at = 0; at < found; at++) {
            int x = points[at] % width;
            int y = points[at] / width;
            left = Math.min(left, x);
            right = Math.max(right, x + 1);
            bottom = Math.max(bottom, y + 1);
            for (int ny = Math.max(0, y - 1); ny <= Math.min(picture.height() - 1, y + 1); ny++) {
                for (int nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
                    int next = ny * width + nx;
                    if (!seen[next] && picture.pixels()[next] == 0) {
                        seen[next] = true;
                        points[found++] = next;
                    }
                }
            }
        }
        Box box = new Box(left, start / width, right, bottom);
        return new Piece(box, Arrays.copyOf(points, found), width);
    }
}
