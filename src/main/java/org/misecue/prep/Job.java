package org.misecue.prep;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Something to start ahead.
 *
 * @param what the job, in the imperative
 * @param before how long before it is needed
 * @param forWhat what needs it: "bowls 1 and 6, step 2"
 * @param step the step that needs it; 0 for the first shot
 * @param at when to start, where the first shot has a time; assumes that the method is filmed in order without a break
 * @param bowls what is in the job's hands; empty where it is no bowl
 * @param limit how long chilled food may be out meanwhile; empty where the job takes none out
 * @param why one sentence
 * @param source where the figure comes from
 */
public record Job(
        String what,
        Duration before,
        String forWhat,
        int step,
        Optional<LocalDateTime> at,
        List<Integer> bowls,
        Optional<RoomLimit> limit,
        String why,
        String source) {}
