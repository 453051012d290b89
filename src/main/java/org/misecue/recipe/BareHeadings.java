package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.misecue.quantity.QuantityReader;
import org.misecue.recipe.manuscript.Line;

/** Finds the headings that nothing marks: a lone "Sponge" above the ingredients of the sponge. */
final class BareHeadings {

    private static final Pattern PART_OF_A_DISH = Pattern.compile(
            "(?:\\p{L}+\\h+){0,2}(?:sponges?|cakes?|drizzle|icing|filling|topping|glaze|base|dough|pastry|syrup|buttercream"
                    + "|frosting|crumble|custard|ganache|streusel|biscuits?|decoration|crust|batter|sauce|coating|finish)",
            Pattern.CASE_INSENSITIVE);
    private static final QuantityReader QUANTITIES = new QuantityReader();

    private BareHeadings() {}

    /** The parts, each bare heading opening a part of its own. */
    static List<Outline.Part> split(List<Outline.Part> parts) {
        List<Outline.Part> split = new ArrayList<>();
        for (Outline.Part part : parts) {
            split.add(new Outline.Part(part.name(), new ArrayList<>()));
            List<Line> lines = part.lines();
            for (int at = 0; at < lines.size(); at++) {
                Line line = lines.get(at);
                if (isBare(line) && at + 1 < lines.size() && isMeasured(lines.get(at + 1))) {
                    split.add(new Outline.Part(Headings.partName(line.text()), new ArrayList<>()));
                } else {
                    split.get(split.size() - 1).lines().add(line);
                }
            }
        }
        return split;
    }

    private static boolean isBare(Line line) {
        return line.is(Line.Kind.TEXT)
                && PART_OF_A_DISH.matcher(line.text().strip()).matches();
    }

    private static boolean isMeasured(Line line) {
        return QUANTITIES.read(line.text()).isPresent();
    }
}
