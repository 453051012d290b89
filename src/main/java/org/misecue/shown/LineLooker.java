package org.misecue.shown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.misecue.footage.Grey;

/** Reads a line once, from a picture prepared in one way. */
final class LineLooker {

    /** How high a capital letter is, in heights of small ones. */
    static final double CAPITAL = 1.4;

    /** In heights of small letters, what is seen above and below them: what rises, what hangs, and a little more. */
    private static final double ABOVE = 0.85;

    private static final double BELOW = 0.6;
    private static final int BORDER = 10;
    private static final int LEAST_CONTRAST = 20;
    /** So sure, of 100, must words be to be kept at a line's end. */
    private static final int WORD = 45;
    /** In heights of small letters, how near a fraction stands to the figure that it belongs to. */
    private static final double JOINED = 0.4;

    private final Recogniser recogniser;

    LineLooker(Recogniser recogniser) {
        this.recogniser = recogniser;
    }

    /** What of the part is looked at for a line. */
    static Box crop(Plates plates, Box body) {
        int height = body.height();
        return new Box(
                        body.left() - height - 4,
                        body.top() - (int) (ABOVE * height) - 2,
                        body.right() + height + 4,
                        body.bottom() + (int) (BELOW * height) + 2)
                .and(plates.part().whole());
    }

    /**
     * Reads a line.
     *
     * @param fractions that are known already, from left to right: they are cut out and put in again as they are
     */
    Look look(Plates plates, Box body, boolean light, Preparation how, List<Token> fractions) {
        Grey whole = how.together() ? plates.together(light) : plates.middle(light);
        Exposure.Levels levels = plates.part().levels(whole, body);
        if (levels.contrast() < LEAST_CONTRAST) {
            return new Look(List.of(), light, how);
        }
        Box crop = crop(plates, body);
        Grey line =
                Tone.stretched(Tone.cut(whole, crop), levels.nearer(how.setOff().share()));
        List<Token> cut =
                fractions.stream().filter(token -> crop.meets(token.box())).toList();
        for (int i = cut.size() - 1; i >= 0; i--) {
            Box box = cut.get(i).box().movedBy(-crop.left(), 0).grown(1, 0);
            line = Tone.withoutColumns(line, Math.max(0, box.left()), Math.min(line.width(), box.right()));
        }
        double scale = Math.max(0.3, Math.min(6, how.capital() / (CAPITAL * body.height())));
        line = how.setOff().filled() ? Outlines.filled(line, scale) : Tone.scaled(line, scale);
        if (how.hard()) {
            line = Tone.withoutEdge(Tone.blackAndWhite(line, how.black()));
        }
        List<Token> tokens = new ArrayList<>();
        for (Word word : recogniser.words(Tone.framed(line, BORDER), Recogniser.Layout.ONE_LINE)) {
            Box box = word.box().movedBy(-BORDER, -BORDER).times(1 / scale).movedBy(crop.left(), crop.top());
            tokens.add(new Token(uncut(box, cut), word.text(), word.sure()));
        }
        return new Look(joined(trimmed(plates, body, tokens), cut, body.height()), light, how);
    }

    /** Where a word is in the picture from which nothing was cut out. */
    private static Box uncut(Box box, List<Token> cut) {
        Box moved = box;
        for (Token fraction : cut) {
            if (moved.left() + moved.right() >= 2 * fraction.box().left()) {
                moved = moved.movedBy(fraction.box().width() + 2, 0);
            }
        }
        return moved;
    }

    /** Without what stands at the ends and is no word, and without what has no strokes that stand. */
    private static List<Token> trimmed(Plates plates, Box body, List<Token> tokens) {
        List<Token> kept = new ArrayList<>(tokens);
        double longest = StripFinder.LONGEST * body.height();
        kept.removeIf(token -> plates.strokes(token.box(), longest) < 2);
        while (!kept.isEmpty() && isRubbish(kept.get(0))) {
            kept.remove(0);
        }
        while (!kept.isEmpty() && isRubbish(kept.get(kept.size() - 1))) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    private static boolean isRubbish(Token token) {
        return !token.hasFigure() && (token.sure() < WORD || !token.hasLetterOrFigure() && !"%".equals(token.text()));
    }

    private static List<Token> joined(List<Token> tokens, List<Token> fractions, int height) {
        if (fractions.isEmpty() || tokens.isEmpty()) {
            return tokens;
        }
        List<Token> ordered = new ArrayList<>(tokens);
        ordered.addAll(fractions);
        ordered.sort(Comparator.comparingInt(token -> token.box().left()));
        List<Token> joined = new ArrayList<>();
        for (Token token : ordered) {
            Token before = joined.isEmpty() ? token : joined.get(joined.size() - 1);
            boolean near = token.box().left() - before.box().right() < JOINED * height;
            if (!joined.isEmpty()
                    && fractions.contains(token)
                    && near
                    && before.text().matches("\\d+")) {
                joined.set(joined.size() - 1, before.with(token));
            } else {
                joined.add(token);
            }
        }
        return joined;
    }
}
