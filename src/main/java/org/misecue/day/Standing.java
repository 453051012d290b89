package org.misecue.day;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Set;

/**
 * How far a day has come.
 *
 * @param now the time
 * @param done numbers of the rows that are finished
 * @param planned when each row was to begin, by its number, as the last plan said
 * @param promised the same as the first plan of the day said; slips are told against it
 */
public record Standing(
        LocalDateTime now,
        Set<Integer> done,
        Map<Integer, LocalDateTime> planned,
        Map<Integer, LocalDateTime> promised) {}
