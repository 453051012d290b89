package org.misecue.pantry;

import java.time.Duration;

/**
 * Something that must be started ahead: "take out of the fridge".
 *
 * @param job the kind of job, such as "warm", "soak" or "chill"
 * @param what the job, in the imperative
 * @param ahead how long before it is needed
 * @param why one sentence
 * @param source where the figure comes from
 */
public record LeadTime(String job, String what, Duration ahead, String why, String source) {}
