package org.misecue.shown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
    /** Of a capital's height, how far a figure may reach into the stroke's height. */
    private static final double SLACK = 0.12;

    /** Where one is, and its figures. */
    record Found(Box box, Piece above, Piece below) {}

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
                found(
                                pieces,
                                stroke,
                                piece -> isFigure(piece, stroke) && isAbove(piece.box(), stroke.box()),
                                piece -> isFigure(piece, stroke) && isBelow(piece.box(), stroke.box()))
                        .ifPresent(found::add);
            } else if (isBar(stroke, capital)) {
                found(
                                pieces,
                                stroke,
                                piece -> isStacked(piece, stroke, capital)
                                        && piece.box().bottom() <= middle(stroke.box()) + SLACK * capital,
                                piece -> isStacked(piece, stroke, capital)
                                        && piece.box().top() >= middle(stroke.box()) - SLACK * capital)
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<Found> found(
            List<Piece> pieces, Piece stroke, Predicate<Piece> isAbove, Predicate<Piece> isBelow) {
        Comparator<Piece> size = Comparator.comparingInt(Piece::area);
        Optional<Piece> above = pieces.stream().filter(isAbove).max(size);
        Optional<Piece> below = pieces.stream().filter(isBelow).max(size);
        return above.flatMap(upper -> below.map(lower -> {
            Box box = upper.box().with(stroke.box()).with(lower.box());
            return new Found(box, upper, lower);
        }));
    }

    private static double middle(Box box) {
        return (box.top() + box.bottom()) / 2.0;
    }

    /** The stroke of a fraction whose figures stand one upon the other: it lies, or rises a little. */
    private static boolean isBar(Piece piece, double capital) {
        Box box = piece.box();
        return box.width() >= 0.25 * capital
                && box.width() <= 0.9 * capital
                && box.height() <= 0.45 * capital
                && box.width() >= 1.2 * box.height();
    }

    private static boolean isStacked(Piece piece, Piece bar, double capital) {
        Box box = piece.box();
        double apart = Math.abs((box.left() + box.right())
                        - (bar.box().left() + bar.box().right()))
                / 2.0;
        boolean touches = Math.abs(middle(box) - middle(bar.box())) <= 0.75 * capital;
        return piece != bar
                && touches
                && apart <= 0.2 * capital
                && box.height() >= 0.25 * capital
                && box.height() <= 0.65 * capital
                && box.width() <= 0.65 * capital;
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
