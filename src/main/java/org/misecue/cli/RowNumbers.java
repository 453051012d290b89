package org.misecue.cli;

import java.util.Set;
import java.util.TreeSet;
import org.misecue.notice.BadInput;
import org.misecue.notice.NumberRun;
import org.misecue.notice.Place;

/** Numbers of rows as people write them: "1-6, 9". */
final class RowNumbers {

    private RowNumbers() {}

    /** @throws BadInput at the first part that is neither a number nor a run of numbers */
    static Set<Integer> of(String option, String text) {
        Set<Integer> rows = new TreeSet<>();
        for (String part : text.split(",", -1)) {
            NumberRun.of(option, part)
                    .orElseThrow(() -> new BadInput(
                            Place.of(option), "expected row numbers such as 1-6,9, not “" + part.strip() + "”."))
                    .numbers()
                    .forEach(rows::add);
        }
        return rows;
    }
}
