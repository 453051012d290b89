package org.misecue.prep;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * How long chilled food that a job takes out may stay out of the fridge. No promise that it is safe till then.
 *
 * @param within in all
 * @param by the same on the clock, where the first shot has a time
 * @param advice what the rule leaves open here and what to do where it would stand out longer; empty for nothing
 */
public record RoomLimit(Duration within, Optional<LocalDateTime> by, String advice) {

    /** US Department of Agriculture: 2 hours between 40 and 140 °F, 1 hour above 90 °F. */
    static final Duration TWO_HOURS = Duration.ofHours(2);

    public static final String SOURCE =
            "the 2-hour rule of the US Department of Agriculture, 4.4–60 °C; local food law decides";

    /** What many kitchens leave out for longer. */
    private static final List<String> BUTTERS = List.of("butter", "margarine", "vegan butter", "lard");

    private static final String BUTTER = "The rule as read here names no exception for butter and its like, which many"
            + " kitchens leave out longer (common practice, no source).";

    /**
     * @param ingredient by its name in the pantry
     * @param stands how long it is out when its last take begins
     */
    static RoomLimit of(String ingredient, Duration stands, Optional<LocalDateTime> out) {
        boolean over = stands.compareTo(TWO_HOURS) > 0;
        String lots = over
                ? "It would be out for " + Wording.duration(stands)
                        + ": take it out in lots, one for each take or step, or put it back in the fridge in between."
                : "";
        String butter = BUTTERS.contains(ingredient) ? BUTTER : "";
        return new RoomLimit(TWO_HOURS, latest(out), (lots + " " + butter).strip());
    }

    /** @param late the bowls that are wanted only after the two hours */
    static RoomLimit ofBowls(List<Integer> late, Optional<LocalDateTime> out) {
        String advice = late.isEmpty()
                ? ""
                : Wording.upperFirst(Wording.bowls(late)) + " must wait longer than that: out again only for the"
                        + " shot; the minutes on the table add up.";
        return new RoomLimit(TWO_HOURS, latest(out), advice);
    }

    private static Optional<LocalDateTime> latest(Optional<LocalDateTime> out) {
        return out.map(time -> time.plus(TWO_HOURS));
    }
}
