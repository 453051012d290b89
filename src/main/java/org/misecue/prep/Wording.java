package org.misecue.prep;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** Small pieces of English that the sheets share. */
public final class Wording {

    private Wording() {}

    /** "a, b and c". */
    public static String list(Collection<String> items) {
        StringBuilder out = new StringBuilder();
        Iterator<String> rest = items.iterator();
        while (rest.hasNext()) {
            String item = rest.next();
            String before = rest.hasNext() ? ", " : " and ";
            out.append(out.isEmpty() ? "" : before).append(item);
        }
        return out.toString();
    }

    /** "step 3", "steps 3, 4 and 6" or "steps 3 to 6"; empty for none. */
    public static String steps(List<Integer> steps) {
        return numbered("step", steps);
    }

    /** "bowl 3", "bowls 3, 4 and 6" or "bowls 3 to 6"; empty for none. */
    public static String bowls(List<Integer> bowls) {
        return numbered("bowl", bowls);
    }

    private static String numbered(String noun, List<Integer> numbers) {
        if (numbers.isEmpty()) {
            return "";
        }
        String ends = numbers.size() == 1 ? " " : "s ";
        return noun + ends + list(runs(numbers));
    }

    /** Three or more in a row as "3 to 6". */
    private static List<String> runs(List<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        for (int from = 0; from < numbers.size(); ) {
            int to = from;
            while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
                to++;
            }
            if (to - from < 2) {
                to = from;
                runs.add(String.valueOf(numbers.get(from)));
            } else {
                runs.add(numbers.get(from) + " to " + numbers.get(to));
            }
            from = to + 1;
        }
        return runs;
    }

    /** "2 small bowls", "1 large jug". */
    public static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** "1 h 30 min", "20 min", "2 days". */
    public static String duration(Duration duration) {
        StringJoiner out = new StringJoiner(" ");
        long hours = duration.toHours();
        if (hours > 0) {
            out.add(hours + " h");
        }
        if (duration.toMinutesPart() > 0 || hours == 0) {
            out.add(duration.toMinutesPart() + " min");
        }
        return out.toString();
    }

    /** A batch as people say it: "× 2.5"; empty for the batch as written. */
    public static String batch(BigDecimal factor) {
        return factor.compareTo(BigDecimal.ONE) == 0 ? "" : "× " + factor.toPlainString();
    }

    public static String upperFirst(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, text.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
                        + text.substring(text.offsetByCodePoints(0, 1));
    }
}
