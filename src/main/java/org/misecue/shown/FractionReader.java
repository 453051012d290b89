package org.misecue.shown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.footage.Grey;
import org.misecue.shown.Components.Piece;
import org.misecue.shown.Preparation.SetOff;

/** Reads the figures of one-sign fractions one by one, in two preparations. */
final class FractionReader {

    /** How high a capital letter is made: small figures must come apart. */
    private static final double CAPITAL = 64;
    /** From the usual darkness of letters to only the darkest, where pieces touch. */
    private static final int[] THRESHOLDS = {128, 96, 64, 160};

    private static final int[] FIGURES = {48, 32, 72};
    private static final int SURE = 50;
    /** How high capitals are, in the film's own pixels, so that 2, 3, 4 and 8 half as high can be told apart. */
    private static final double LARGE = 20;

    private static final int ROOM = 16;

    private final Recogniser recogniser;

    FractionReader(Recogniser recogniser) {
        this.recogniser = recogniser;
    }

    /**
     * @param agreed whether both preparations showed the same, and all of it could be read
     * @param clear whether its figures are large enough to be told apart
     */
    record Seen(List<Token> fractions, boolean agreed, boolean clear) {

        boolean sure() {
            return agreed && (clear || fractions.isEmpty());
        }
    }

    /**
     * Looks for fractions in the line whose body is in a box.
     *
     * @param setOff by which its letters were read best; small figures may need the whole contrast
     * @param suspect whether something was read that a fraction may be taken for, so that every way is tried
     */
    Seen read(Plates plates, Box body, boolean light, SetOff setOff, boolean suspect) {
        Seen first = twice(plates, body, light, setOff);
        if (first.agreed() && !first.fractions().isEmpty()) {
            return first;
        }
        List<SetOff> others = suspect || !first.agreed() ? Preparation.WAYS : List.of(SetOff.PLAIN);
        return others.stream()
                .filter(other -> !other.equals(setOff))
                .map(other -> twice(plates, body, light, other))
                .filter(seen -> seen.agreed() && !seen.fractions().isEmpty())
                .findFirst()
                .orElse(first);
    }

    private Seen twice(Plates plates, Box body, boolean light, SetOff setOff) {
        Seen common = read(plates, plates.together(light), body, setOff);
        Seen middle = read(plates, plates.middle(light), body, setOff);
        List<String> one = common.fractions().stream().map(Token::text).toList();
        List<String> other = middle.fractions().stream().map(Token::text).toList();
        Seen more = one.size() >= other.size() ? common : middle;
        return new Seen(more.fractions(), one.equals(other) && common.agreed() && middle.agreed(), more.clear());
    }

    /** Outlines that were filled have no holes left. */
    private static boolean isClear(Box body, SetOff setOff) {
        return !setOff.filled() && LineLooker.CAPITAL * body.height() >= LARGE;
    }

    private Seen read(Plates plates, Grey whole, Box body, SetOff setOff) {
        Box crop = LineLooker.crop(plates, body);
        double capital = LineLooker.CAPITAL * body.height();
        double scale = Math.max(0.5, Math.min(8, CAPITAL / capital));
        Exposure.Levels levels = plates.part().levels(whole, crop).nearer(setOff.share());
        Grey line = Tone.stretched(Tone.cut(whole, crop), levels);
        line = setOff.filled() ? Outlines.filled(line, scale) : Tone.scaled(line, scale);
        List<Token> read = new ArrayList<>();
        List<Box> unread = new ArrayList<>();
        for (int threshold : THRESHOLDS) {
            for (Fractions.Found found : Fractions.find(Tone.blackAndWhite(line, threshold), capital * scale)) {
                Box box = found.box().times(1 / scale).movedBy(crop.left(), crop.top());
                if (read.stream().noneMatch(token -> token.box().meets(box))) {
                    Optional<String> sign = sign(found);
                    sign.ifPresent(text -> read.add(new Token(box, text, 95)));
                    if (sign.isEmpty() && !isPercent(found)) {
                        unread.add(box);
                    }
                }
            }
        }
        unread.removeIf(box -> read.stream().anyMatch(token -> token.box().meets(box)));
        read.sort(Comparator.comparingInt(token -> token.box().left()));
        return new Seen(read, unread.isEmpty(), isClear(body, setOff));
    }

    private static boolean isPercent(Fractions.Found found) {
        return Fractions.holes(found.above()) == 1 && Fractions.holes(found.below()) == 1;
    }

    private Optional<String> sign(Fractions.Found found) {
        return figure(found.above())
                .flatMap(above -> figure(found.below()).flatMap(below -> Fractions.sign(above, below)));
    }

    private Optional<String> figure(Piece piece) {
        Grey alone = piece.alone(2);
        // The recogniser sees nothing in some single signs, and sees them in another size.
        for (int height : FIGURES) {
            Grey large = Tone.framed(Tone.scaled(alone, (double) height / alone.height()), ROOM);
            List<Word> words = recogniser.words(large, Recogniser.Layout.ONE_SIGN, "12345678");
            if (words.isEmpty()) {
                words = recogniser.words(large, Recogniser.Layout.ONE_LINE, "12345678");
            }
            if (words.size() == 1
                    && words.get(0).text().length() == 1
                    && words.get(0).sure() >= SURE) {
                return Optional.of(words.get(0).text()).filter(text -> Fractions.fits(text, Fractions.holes(piece)));
            }
        }
        return Optional.empty();
    }
}
