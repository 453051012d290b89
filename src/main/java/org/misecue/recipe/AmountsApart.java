package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import org.misecue.quantity.QuantityReader;
import org.misecue.recipe.manuscript.Line;

/** Joins amount and name where a table set them apart and only its cells were kept: "175 g", then "butter, cubed". */
final class AmountsApart {

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private AmountsApart() {}

    static Outline.Part joined(Outline.Part part) {
        List<Line> lines = new ArrayList<>();
        for (Line line : part.lines()) {
            int last = lines.size() - 1;
            if (last >= 0 && isName(line) && isAmount(lines.get(last))) {
                lines.set(last, lines.get(last).with(line.text()));
            } else {
                lines.add(line);
            }
        }
        return new Outline.Part(part.name(), lines);
    }

    private static boolean isAmount(Line line) {
        String text = line.text().strip();
        return QUANTITIES.read(text).filter(all -> all.end() == text.length()).isPresent();
    }

    private static boolean isName(Line line) {
        return line.is(Line.Kind.TEXT) && QUANTITIES.read(line.text()).isEmpty();
    }
}
