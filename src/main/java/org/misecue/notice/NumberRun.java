package org.misecue.notice;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A number or a run of numbers as people write them: "3", "5-7".
 *
 * @param from the first, from 0 to 9999
 * @param to the last; not below the first
 */
public record NumberRun(int from, int to) {

    private static final Pattern RUN = Pattern.compile("(\\d{1,4})(?:\\s*[-–]\\s*(\\d{1,4}))?");

    /**
     * Empty where the text is neither.
     *
     * @param option that the text was given to
     * @throws BadInput if the run goes downwards
     */
    public static Optional<NumberRun> of(String option, String text) {
        Matcher run = RUN.matcher(text.strip());
        if (!run.matches()) {
            return Optional.empty();
        }
        int from = Integer.parseInt(run.group(1));
        int to = run.group(2) == null ? from : Integer.parseInt(run.group(2));
        if (to < from) {
            throw new BadInput(Place.of(option), "a run goes upwards; write " + to + "-" + from + ".");
        }
        return Optional.of(new NumberRun(from, to));
    }

    public IntStream numbers() {
        return IntStream.rangeClosed(from, to);
    }
}
