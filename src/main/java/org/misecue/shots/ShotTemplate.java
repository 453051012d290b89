package org.misecue.shots;

import java.util.List;

/**
 * How one technique is filmed.
 *
 * @param technique the key that steps carry: "cream"
 * @param words how a method says it, in beginnings of words, so that each ingredient is given to the action it is added
 *     in
 * @param adds whether ingredients go in during this action, so that their bowls must stand ready
 * @param coverage the shots, in the order they are filmed; at least one
 * @param hazards reminders for the people on set
 */
public record ShotTemplate(
        String technique, List<String> words, boolean adds, List<Coverage> coverage, List<String> hazards) {}
