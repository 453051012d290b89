package org.misecue.edit;

import java.time.Duration;
import java.util.List;
import org.misecue.narration.Narration;

/**
 * A film and what is said in it.
 *
 * @param file relative to the episode
 * @param length of the film
 * @param narrations those on its clock; empty where nobody speaks
 */
public record FilmedTalk(String file, Duration length, List<Narration> narrations) {}
