package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.misecue.recipe.Outline.MethodLine;
import org.misecue.recipe.manuscript.Line;

/** Joins the lines of a method that only a mail program or an editor broke. */
final class Paragraphs {

    private static final Pattern FINISHED = Pattern.compile("(?s).*[.!?:][)\"’”]?\\h*");

    private Paragraphs() {}

    static List<MethodLine> joined(List<MethodLine> lines) {
        boolean spaced = lines.stream()
                .skip(1)
                .anyMatch(each -> each.line().is(Line.Kind.TEXT) && each.line().gap());
        boolean marked = lines.stream().anyMatch(each -> each.line().is(Line.Kind.NUMBERED));
        List<MethodLine> joined = new ArrayList<>();
        for (MethodLine each : lines) {
            int last = joined.size() - 1;
            if (last >= 0 && continues(joined.get(last), each, spaced || marked)) {
                MethodLine before = joined.get(last);
                joined.set(
                        last,
                        new MethodLine(
                                before.part(), before.line().with(each.line().text())));
            } else {
                joined.add(each);
            }
        }
        return joined.stream().filter(each -> !each.line().text().isBlank()).toList();
    }

    private static boolean continues(MethodLine before, MethodLine line, boolean spaced) {
        if (!line.line().is(Line.Kind.TEXT) || !line.part().equals(before.part())) {
            return false;
        }
        if (before.line().text().isEmpty()) {
            return true;
        }
        boolean unfinished = !FINISHED.matcher(before.line().text()).matches();
        return !line.line().gap() && (spaced || unfinished);
    }
}
