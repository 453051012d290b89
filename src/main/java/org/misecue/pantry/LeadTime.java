package org.misecue.pantry;

import java.time.Duration;

/**
 * Something that must be started ahead: "take out of the fridge".
 *
 * @param what the job, in the imperative
 * @param ahead how long before it is needed
 * @param why one sentence
 * @param source where the figure comes from
 */
public record LeadTime(String what, Duration ahead, String why, String source) {}
