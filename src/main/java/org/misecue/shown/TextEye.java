package org.misecue.shown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reads the writing in a part of the picture: lines are found by their strokes, and where much is left over, as in a
 * picture that stands still, by the recogniser itself.
 */
final class TextEye implements Eye {

    /** How high small letters are made for finding lines. */
    private static final int LETTER = 20;
    /** Of the strokes, so many may be left over. */
    private static final double LEFT_OVER = 0.4;

    private static final int WORD = 55;
    /** Of the usual height, a line that is lower was cut by noise. */
    private static final double LOW = 0.75;

    private static final int ENOUGH = 3;

    private final Recogniser recogniser;
    private final LineReader reader;

    TextEye(Recogniser recogniser) {
        this.recogniser = recogniser;
        this.reader = new LineReader(recogniser);
    }

    @Override
    public List<ReadLine> read(Exposure part) {
        Plates plates = new Plates(part);
        List<ReadLine> lines = new ArrayList<>();
        List<Box> strips = StripFinder.find(plates);
        int usual = usualHeight(strips);
        for (Box strip : strips) {
            Optional<ReadLine> line = reader.read(plates, strip);
            boolean low = line.isEmpty() && strip.height() < LOW * usual;
            add(lines, low ? reader.read(plates, ofHeight(strip, usual).and(part.whole())) : line);
        }
        if (strokes(plates, lines)
                < (1 - LEFT_OVER) * plates.strokes(part.whole(), part.whole().height())) {
            for (boolean light : List.of(true, false)) {
                scattered(plates, light).stream()
                        .filter(body ->
                                lines.stream().noneMatch(line -> line.box().meets(body)))
                        .forEach(body -> add(lines, reader.read(plates, body)));
            }
        }
        lines.sort(Comparator.comparingInt((ReadLine line) -> line.box().top())
                .thenComparingInt(line -> line.box().left()));
        return lines;
    }

    /** Lines of a card are about equally high; where there are too few to tell, none is too low. */
    private static int usualHeight(List<Box> strips) {
        List<Integer> heights = strips.stream().map(Box::height).sorted().toList();
        return heights.size() < ENOUGH ? 0 : heights.get(heights.size() / 2);
    }

    private static Box ofHeight(Box strip, int height) {
        int more = height - strip.height();
        return new Box(strip.left(), strip.top() - (more + 1) / 2, strip.right(), strip.bottom() + more / 2);
    }

    private static void add(List<ReadLine> lines, Optional<ReadLine> line) {
        line.filter(Writing::isWriting).ifPresent(lines::add);
    }

    private static double strokes(Plates plates, List<ReadLine> lines) {
        return lines.stream()
                .mapToDouble(
                        line -> plates.strokes(line.box(), plates.part().whole().height()))
                .sum();
    }

    /** Bodies of lines as the recogniser finds them. */
    private List<Box> scattered(Plates plates, boolean light) {
        Exposure part = plates.part();
        double scale = Math.max(0.4, Math.min(3, LETTER / part.letter()));
        List<Box> bodies = new ArrayList<>();
        for (Word word : recogniser.words(Tone.scaled(plates.together(light), scale), Recogniser.Layout.SCATTERED)) {
            if (word.sure() >= WORD && word.text().codePoints().anyMatch(Character::isLetterOrDigit)) {
                Box box = word.box().times(1 / scale);
                int quarter = box.height() / 4;
                Box body = new Box(
                        box.left(),
                        box.top() + quarter,
                        box.right(),
                        Math.max(box.top() + quarter + 3, box.bottom() - quarter / 2));
                join(bodies, body);
            }
        }
        return bodies;
    }

    /** Words side by side are one line. */
    private static void join(List<Box> bodies, Box body) {
        for (int i = 0; i < bodies.size(); i++) {
            Box other = bodies.get(i);
            int common = Math.min(other.bottom(), body.bottom()) - Math.max(other.top(), body.top());
            boolean level = common > 0.5 * Math.min(other.height(), body.height());
            int gap = Math.max(other.left(), body.left()) - Math.min(other.right(), body.right());
            if (level && gap < 3 * Math.max(other.height(), body.height())) {
                bodies.set(i, other.with(body));
                return;
            }
        }
        bodies.add(body);
    }
}
