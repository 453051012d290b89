package org.misecue.prep;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * What stands on the label of a bowl, in letters as large as its size allows.
 *
 * @param bowl whose label it is
 * @param set "take 2"; empty where there is one set only
 * @param lines below the name: amounts, what is done to them, where they go, what to mind
 * @param points the size of the letters
 */
public record PrintedLabel(Bowl bowl, String set, List<Line> lines, double points) {

    /** @param style how it is printed, a class of the page */
    public record Line(String text, String style) {}

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double LARGEST = 14;
    private static final double SMALLEST = 4.5;
    private static final double LEAST = 2.5;
    private static final double LINE_HEIGHT = 1.22;

    private static final double PADDING_MM = 5;

    /** The number's share of the label's width. */
    static final double NUMBER_MM = 15;

    /** @throws BadInput if the label is too small for all that belongs on it */
    static PrintedLabel of(PrepPlan plan, String set, Bowl bowl, LabelSheet sheet) {
        for (boolean runOn : new boolean[] {false, true}) {
            List<Line> lines = lines(plan, bowl, runOn);
            double points = fit(lines, sheet);
            if (points >= SMALLEST || runOn && sheet.equals(LabelSheet.USUAL)) {
                return new PrintedLabel(bowl, set, lines, points);
            }
        }
        throw new BadInput(
                Place.of("--grid"),
                "what belongs on the label of bowl %d cannot be read at %dx%d; take fewer labels to a sheet."
                        .formatted(bowl.number(), sheet.columns(), sheet.rows()));
    }

    /** @param runOn whether the contents share their lines, where there are too many for a line each */
    private static List<Line> lines(PrepPlan plan, Bowl bowl, boolean runOn) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(Wording.upperFirst(bowl.name()), "name"));
        boolean several = bowl.contents().size() > 1;
        List<String> contents = bowl.contents().stream()
                .map(content -> PrepWords.amount(content) + (several ? " " + content.label() : ""))
                .toList();
        (runOn ? List.of(String.join("; ", contents)) : contents).forEach(text -> lines.add(new Line(text, "amount")));
        add(lines, bowl.preparation(), "small");
        bowl.reading().ifPresent(reading -> add(lines, reading.words(), "small"));
        add(lines, PrepWords.where(bowl), "small");
        add(lines, PrepWords.allergens(bowl.allergens()), "allergens");
        add(lines, String.join("; ", plan.cautions(bowl)), "small");
        return Collections.unmodifiableList(lines);
    }

    private static void add(List<Line> lines, String text, String style) {
        if (!text.isEmpty()) {
            lines.add(new Line(text, style));
        }
    }

    /** For a style sheet. */
    public String size() {
        return String.format(Locale.ROOT, "%.1fpt", points);
    }

    private static double fit(List<Line> lines, LabelSheet sheet) {
        double width = (sheet.width() - NUMBER_MM - PADDING_MM) * POINTS_PER_MM;
        double height = (sheet.height() - PADDING_MM) * POINTS_PER_MM;
        double points = LARGEST;
        while (points > LEAST && high(lines, points, width) > height) {
            points -= 0.25;
        }
        return points;
    }

    private static double high(List<Line> lines, double points, double width) {
        return lines.stream()
                .mapToDouble(line -> {
                    double size = line.style().equals("name") || line.style().equals("amount") ? points : points * 0.8;
                    return Wrap.lines(line.text(), width, size) * size * LINE_HEIGHT;
                })
                .sum();
    }
}
