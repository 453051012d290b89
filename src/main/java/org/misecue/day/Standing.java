package org.misecue.day;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How far a day has come.
 *
 * @param now the time
 * @param done numbers of the rows that are finished
 * @param planned when each row was to begin, by its number, as the last plan said
 * @param ovens which oven each bake was to stand in, from 0, by the number of its row
 * @param promised the same as the first plan of the day said; slips are told against it
 * @param promisedEnd when all was to be done as the first plan said
 */
public record Standing(
        LocalDateTime now,
        Set<Integer> done,
        Map<Integer, LocalDateTime> planned,
        Map<Integer, Integer> ovens,
        Map<Integer, LocalDateTime> promised,
        Optional<LocalDateTime> promisedEnd) {}
