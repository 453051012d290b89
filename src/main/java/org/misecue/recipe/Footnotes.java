package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.recipe.manuscript.Line;

/** Puts a footnote where its mark stands: "175 g butter*" and "* or use margarine" say "175 g butter (or use margarine)". */
final class Footnotes {

    private static final Cued NOTE = Cued.of("^(\\*{1,3}|†|‡|§)\\h*(\\p{L}.*?)\\.?$");
    /** A star with a blank behind it was taken for a bullet. */
    private static final Cued STARLESS = Cued.of("^((?:or|if|use|see|you can|instead)\\b.*?)\\.?$");

    private static final Pattern MARK = Pattern.compile("(?<=[\\p{L}\\p{N},.)])\\h?(\\*{1,3}|†|‡|§)(?=[\\h,.;)]|$)");

    private Footnotes() {}

    static List<Line> inlined(List<Line> lines) {
        List<Line> kept = new ArrayList<>();
        for (Line line : lines) {
            if (!isPlaced(line, kept)) {
                kept.add(line);
            }
        }
        return kept;
    }

    private static boolean isPlaced(Line line, List<Line> before) {
        if (line.is(Line.Kind.HEADING)) {
            return false;
        }
        String text = line.text().strip();
        Optional<Matcher> note = NOTE.whole(text);
        if (note.isPresent()) {
            return place(note.get().group(1), note.get().group(2), before);
        }
        return line.is(Line.Kind.ITEM)
                && STARLESS.whole(text)
                        .filter(starless -> place("*", starless.group(1), before))
                        .isPresent();
    }

    /** Every line that bears the mark gets the note; whether there was one. */
    private static boolean place(String mark, String note, List<Line> lines) {
        boolean placed = false;
        for (int at = 0; at < lines.size(); at++) {
            Line line = lines.get(at);
            Matcher found = MARK.matcher(line.text());
            if (!line.is(Line.Kind.HEADING) && found.find() && found.group(1).equals(mark)) {
                String text = found.replaceFirst("") + " (" + note + ")";
                lines.set(at, new Line(line.number(), line.kind(), line.level(), text, line.gap()));
                placed = true;
            }
        }
        return placed;
    }
}
