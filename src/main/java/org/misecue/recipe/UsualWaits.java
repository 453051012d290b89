package org.misecue.recipe;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How long something takes where the method does not say, by the table {@code waits.csv}. */
final class UsualWaits {

    private record Row(String what, Pattern words, Duration time) {}

    private static final List<Row> ROWS =
            TableFile.rows("waits.csv").stream().map(UsualWaits::row).toList();

    private UsualWaits() {}

    /** Empty for what is no wait unless it has a time, such as setting something aside. */
    static Optional<Duration> of(String what, String sentence) {
        return ROWS.stream()
                .filter(row ->
                        row.what.equals(what) && row.words.matcher(sentence).find())
                .map(Row::time)
                .findFirst();
    }

    private static Row row(String line) {
        String[] cells = line.split(" \\| ", -1);
        String words =
                Arrays.stream(cells[1].split(" ; ", -1)).map(String::strip).collect(Collectors.joining("|"));
        return new Row(
                cells[0].strip(),
                Pattern.compile(words, Pattern.CASE_INSENSITIVE),
                Duration.ofMinutes(Long.parseLong(cells[2].strip())));
    }
}
