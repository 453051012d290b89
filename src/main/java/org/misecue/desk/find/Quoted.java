package org.misecue.desk.find;

import java.util.ArrayList;
import java.util.List;
import org.misecue.search.Hit;

/**
 * A stretch of a quote.
 *
 * @param marked whether it is what was looked for
 */
public record Quoted(String text, boolean marked) {

    static List<Quoted> of(Hit hit) {
        List<Quoted> parts = new ArrayList<>();
        int from = 0;
        for (Hit.Mark mark : hit.marks()) {
            if (mark.from() >= from) {
                add(hit.quote().substring(from, mark.from()), false, parts);
                add(hit.quote().substring(mark.from(), mark.to()), true, parts);
                from = mark.to();
            }
        }
        add(hit.quote().substring(from), false, parts);
        return parts;
    }

    private static void add(String text, boolean marked, List<Quoted> parts) {
        if (!text.isEmpty()) {
            parts.add(new Quoted(text, marked));
        }
    }
}
