package org.misecue.shown;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.footage.Grey;
import org.misecue.shown.Components.Piece;

/**
 * Finds fractions that are one sign, such as ½: a small figure above a rising stroke and one below it. English language
 * data knows none of them and reads them as %, 4 or 12.
 */
final class Fractions {

    private static final Map<String, String> SIGNS = Map.of(
            "1/2", "½", "1/3", "⅓", "2/3", "⅔", "1/4", "¼", "3/4", "¾", "1/8", "⅛", "3/8", "⅜", "5/8", "⅝", "7/8", "⅞");

    /** Of the stroke's height: the figures' least and most. */
    private static final double SMALLEST = 0.3;

    private static final double LARGEST = 0.72;
    /** How well the stroke must rise. */
    private static final double RISES = 0.85;

    /** Where one is, and the pieces that its figures are made of. */
    record Found(Box box, List<Piece> pieces, Piece above, Piece below) {}

    private Fractions() {}

    /** The sign for two figures; empty where there is none. */
    static Optional<String> sign(String above, String below) {
        return Optional.ofNullable(SIGNS.get(above + "/" + below));
    }

    /** @param capital about how high a capital letter is, in pixels */
    static List<Found> find(Grey blackAndWhite, double capital) {
        List<Piece> pieces = Components.of(blackAndWhite);
        List<Found> found = new ArrayList<>();
        for (Piece stroke : pieces) {
            if (isStroke(stroke, capital)) {
                Optional<Piece> above = pieces.stream()
                        .filter(piece -> isFigure(piece, stroke) && isAbove(piece.box(), stroke.box()))
                        .max(java.util.Comparator.comparingInt(Piece::area));
                Optional<Piece> below = pieces.stream()
                        .filter(piece -> isFigure(piece, stroke) && isBelow(piece.box(), stroke.box()))
                        .max(java.util.Comparator.comparingInt(Piece::area));
                if (above.isPresent() && below.isPresent()) {
                    List<Piece> all = List.of(above.get(), stroke, below.get());
                    Box box = above.get().box().with(stroke.box()).with(below.get().box());
                    found.add(new Found(box, all, above.get(), below.get()));
                }
            }
        }
        return found;
    }

    private static boolean isStroke(Piece piece, double capital) {
        Box box = piece.box();
        return box.height() >= 0.6 * capital
                && box.height() <= 1.7 * capital
                && box.width() >= 0.2 * box.height()
                && piece.rises() >= RISES;
    }

    private static boolean isFigure(Piece piece, Piece stroke) {
        double height = (double) piece.box().height() / stroke.box().height();
        return piece != stroke
                && height >= SMALLEST
                && height <= LARGEST
                && piece.box().width() <= 0.75 * stroke.box().height();
    }

    /** To the left of the stroke and above its foot, so near that they belong together. */
    private static boolean isAbove(Box figure, Box stroke) {
        double middle = (figure.left() + figure.right()) / 2.0;
        return middle < (stroke.left() + stroke.right()) / 2.0
                && figure.right() >= stroke.left() - 0.12 * stroke.height()
                && figure.bottom() <= stroke.top() + 0.8 * stroke.height()
                && figure.top() <= stroke.top() + 0.25 * stroke.height();
    }

    private static boolean isBelow(Box figure, Box stroke) {
        double middle = (figure.left() + figure.right()) / 2.0;
        return middle > (stroke.left() + stroke.right()) / 2.0
                && figure.left() <= stroke.right() + 0.12 * stroke.height()
                && figure.top() >= stroke.top() + 0.2 * stroke.height()
                && figure.bottom() >= stroke.bottom() - 0.25 * stroke.height();
    }

    /** How many holes a figure has: a second look at what it was read as. */
    static int holes(Piece piece) {
        Grey alone = piece.alone(1);
        byte[] turned = new byte[alone.pixels().length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = (byte) (alone.pixels()[i] == 0 ? 255 : 0);
        }
        // The ground around is one piece, each hole another; specks do not count.
        long grounds = Components.of(new Grey(alone.width(), alone.height(), turned)).stream()
                .filter(ground -> ground.area() > 2)
                .count();
        return (int) Math.max(0, grounds - 1);
    }

    /** Whether a figure may have so many holes; a 4 may be written open. */
    static boolean fits(String figure, int holes) {
        return switch (figure) {
            case "4" -> holes <= 1;
            case "8" -> holes == 2;
            default -> holes == 0;
        };
    }
}
