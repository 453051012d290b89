package org.misecue.cli;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Numbers of rows as people write them: "1-6, 9". */
final class RowNumbers {

    private static final Pattern RUN = Pattern.compile("(\\d{1,4})(?:\\s*[-–]\\s*(\\d{1,4}))?");

    private RowNumbers() {}

    /** @throws BadInput at the first part that is neither a number nor a run of numbers */
    static Set<Integer> of(String option, String text) {
        Set<Integer> rows = new TreeSet<>();
        for (String part : text.split(",", -1)) {
            Matcher run = RUN.matcher(part.strip());
            if (!run.matches()) {
                throw new BadInput(Place.of(option), "expected row numbers such as 1-6,9, not “" + part.strip() + "”.");
            }
            int from = Integer.parseInt(run.group(1));
            int to = run.group(2) == null ? from : Integer.parseInt(run.group(2));
            if (to < from) {
                throw new BadInput(Place.of(option), "a run goes upwards; write " + to + "-" + from + ".");
            }
            for (int row = from; row <= to; row++) {
                rows.add(row);
            }
        }
        return rows;
    }
}
