package org.misecue.shown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.shown.Preparation.SetOff;

/**
 * Reads one line several times, from differently prepared pictures, and believes its figures only where the readings
 * agree.
 */
final class LineReader {

    /** So sure, of 100, must a line be to be one, and to be good enough not to look for a better preparation. */
    private static final int LINE = 60;

    private static final int GOOD = 88;
    /** So sure must figures be to be believed, and to be heard against others. */
    private static final int FIGURE = 70;

    private static final int DISSENT = 55;
    /** So sure must a witness be to be heard: the darkest of letters alone is often torn. */
    private static final int WITNESS = 80;
    /** A reading that makes less than this share of the best out of the line does not count. */
    private static final double WORTHY = 0.6;
    /** So much more must a fainter preparation make out of a line to be taken. */
    private static final double BETTER = 1.05;
    /** Letters within outlines are taken where so much of the best reading is read there. */
    private static final double WITHIN = 0.75;
    /** In heights of small letters, the room that a figure needs beside the words and, with its spaces, between them. */
    private static final double BESIDE = 0.35;

    private static final double BETWEEN = 0.85;
    /** In heights of small letters, how far the next word may be. */
    private static final double NEAR = 1.3;
    /** Of a small letter's height, the strokes in a gap that make a sign which nobody read. */
    private static final double UNREAD = 0.5;

    /** So many looks are enough for a line without figures, if so sure. */
    private static final int ENOUGH = 2;

    private static final int PLAIN = 90;

    private final LineLooker looker;
    private final FractionReader fractions;

    LineReader(Recogniser recogniser) {
        looker = new LineLooker(recogniser);
        fractions = new FractionReader(recogniser);
    }

    /**
     * Reads the line whose body is in a box; empty where it is none.
     *
     * @param found from the tops of small letters to their feet, in the part's pixels
     */
    Optional<ReadLine> read(Plates plates, Box found) {
        Box body = extended(plates, found);
        Look light = best(plates, body, true, List.of(SetOff.PLAIN));
        Look dark = best(plates, body, false, List.of(SetOff.PLAIN));
        Look clearer = light.credit() >= dark.credit() ? light : dark;
        if (Math.max(light.sure(), dark.sure()) < GOOD
                || Math.min(light.sure(), dark.sure()) >= LINE
                || hasUnread(plates, body, clearer.tokens())) {
            // Letters with an outline may be read as the outline's shape, where a 3 looks like an 8.
            light = best(plates, body, true, Preparation.WAYS);
            dark = best(plates, body, false, Preparation.WAYS);
        }
        Look best = light.credit() >= dark.credit() ? light : dark;
        Look other = best.light() ? dark : light;
        if (other.sure() >= LINE || Figures.doubtful(best.mended().tokens())) {
            // An outline reads nearly as its letters do. What it goes around is what was written.
            Look within = best(plates, body, other.light(), List.of(SetOff.FILLED));
            if (within.credit() >= WITHIN * best.credit()) {
                other = best;
                best = within;
            }
        }
        if (best.sure() < LINE || best.tokens().isEmpty()) {
            return Optional.empty();
        }
        ReadLine line = agreed(plates, body, best.mended());
        boolean disputed = other.credit() >= WORTHY * best.credit() && contradicts(other.mended(), best.mended());
        return Optional.of(disputed ? line.doubted() : line);
    }

    private Look best(Plates plates, Box body, boolean light, List<SetOff> ways) {
        Look best = new Look(List.of(), light, Preparation.first(SetOff.PLAIN));
        for (SetOff way : ways) {
            Look look = looker.look(plates, body, light, Preparation.first(way), List.of());
            best = look.credit() > BETTER * best.credit() ? look : best;
        }
        return best;
    }

    private ReadLine agreed(Plates plates, Box body, Look first) {
        boolean light = first.light();
        SetOff setOff = first.how().setOff();
        FractionReader.Seen seen = fractions.read(plates, body, light, setOff, Figures.doubtful(first.tokens()));
        List<Look> all = new ArrayList<>();
        for (Preparation how : Preparation.all(setOff)) {
            all.add(looker.look(plates, body, light, how, seen.fractions()).mended());
            if (all.size() == ENOUGH
                    && seen.fractions().isEmpty()
                    && all.stream().allMatch(LineReader::isPlain)) {
                break;
            }
        }
        int most = all.stream().mapToInt(Look::worth).max().orElse(0);
        List<Look> looks =
                all.stream().filter(look -> look.worth() >= WORTHY * most).toList();
        Look best = looks.stream()
                .max(Comparator.comparingInt((Look look) -> supporting(looks, look))
                        .thenComparingInt(Look::worth))
                .orElseThrow();
        boolean doubtful = !seen.sure()
                || !isBelieved(looks, best)
                || Figures.doubtful(best.tokens())
                || hasUnread(plates, body, best.tokens())
                || isDenied(plates, body, best, seen.fractions());
        Box box = best.tokens().stream().map(Token::box).reduce(Box::with).orElse(body);
        return new ReadLine(box, Token.text(Figures.likeliest(best.tokens())), doubtful, best.sure());
    }

    /** Whether the darkest of the letters shows other figures. */
    private boolean isDenied(Plates plates, Box body, Look best, List<Token> fractions) {
        return !best.figures().isEmpty()
                && Preparation.witnesses(best.how().setOff()).stream()
                        .map(how -> looker.look(plates, body, best.light(), how, fractions)
                                .mended())
                        .anyMatch(look ->
                                look.figuresSure() >= WITNESS && Figures.differ(look.figures(), best.figures()));
    }

    /** Surely words only. */
    private static boolean isPlain(Look look) {
        return look.sure() >= PLAIN && look.figures().isEmpty() && !Figures.doubtful(look.tokens());
    }

    /** How many do not say otherwise. */
    private static int supporting(List<Look> looks, Look look) {
        return (int) looks.stream()
                .filter(other -> !Figures.contradict(other.figures(), look.figures()))
                .count();
    }

    private static List<Look> agreeing(List<Look> looks, Look with) {
        return looks.stream().filter(look -> look.agrees(with)).toList();
    }

    /** Seen surely, in what the pictures have in common and in their middle, and not otherwise in any of them. */
    static boolean isBelieved(List<Look> looks, Look best) {
        List<Look> agreeing = agreeing(looks, best);
        boolean twice =
                agreeing.stream().map(look -> look.how().together()).distinct().count() > 1;
        // Where letters are filled, so may be what tells a 6 from a 3; they must be seen as they are, too.
        boolean filled = best.how().setOff().filled();
        boolean unfilled =
                agreeing.stream().anyMatch(look -> !look.how().setOff().filled());
        boolean surely = agreeing.stream().anyMatch(look -> look.figuresSure() >= FIGURE);
        return twice
                && surely
                && (unfilled || !filled || best.figures().isEmpty())
                && looks.stream().noneMatch(look -> contradicts(look, best));
    }

    private static boolean contradicts(Look look, Look best) {
        return Figures.contradict(look.figures(), best.figures())
                && look.figuresSure() >= DISSENT
                && look.sure() >= LINE;
    }

    /** With the strokes that stand near its ends: a figure may be where the line was thought to end. */
    private static Box extended(Plates plates, Box found) {
        int near = (int) (NEAR * found.height());
        double longest = StripFinder.LONGEST * found.height();
        Box body = found.and(plates.part().whole());
        while (true) {
            Box before = new Box(body.left() - near, body.top(), body.left(), body.bottom());
            Box after = new Box(body.right(), body.top(), body.right() + near, body.bottom());
            Box wider = body;
            if (isSign(plates, before, longest)) {
                wider = wider.with(new Box(plates.leftmost(before, longest), body.top(), body.left(), body.bottom()));
            }
            if (isSign(plates, after, longest)) {
                wider = wider.with(new Box(body.left(), body.top(), plates.rightmost(after, longest), body.bottom()));
            }
            if (wider.equals(body)) {
                return body;
            }
            body = wider;
        }
    }

    /** Whether the strokes in a box are enough for a sign. */
    private static boolean isSign(Plates plates, Box in, double longest) {
        return plates.strokes(in, longest)
                >= UNREAD * in.height() / plates.part().grain();
    }

    /** Whether there are strokes between or beside the words that nobody read, and room for a sign. */
    static boolean hasUnread(Plates plates, Box body, List<Token> tokens) {
        double longest = StripFinder.LONGEST * body.height();
        int slack = Math.max(2, (int) plates.part().grain());
        List<Token> ordered = new ArrayList<>(tokens);
        ordered.sort(Comparator.comparingInt(token -> token.box().left()));
        int at = body.left();
        double room = BESIDE;
        for (Token token : ordered) {
            Box gap = new Box(at + slack, body.top(), token.box().left() - slack, body.bottom());
            if (gap.width() >= room * body.height() && isSign(plates, gap, longest)) {
                return true;
            }
            room = BETWEEN;
            at = Math.max(at, token.box().right());
        }
        Box rest = new Box(at + slack, body.top(), body.right(), body.bottom());
        return rest.width() >= BESIDE * body.height() && isSign(plates, rest, longest);
    }
}
