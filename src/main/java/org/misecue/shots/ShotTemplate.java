package org.misecue.shots;

import java.util.List;

/**
 * How one technique is filmed.
 *
 * @param technique the key that steps carry: "cream"
 * @param words how a method says it, for techniques that the reading of recipes does not list itself
 * @param adds which ingredients go in during this action, so that their bowls must stand ready
 * @param cooks whether what is raw is cooked afterwards
 * @param coverage the shots, in the order they are filmed; at least one
 * @param hazards reminders for the people on set
 */
record ShotTemplate(
        String technique,
        List<MethodPhrase> words,
        Adds adds,
        boolean cooks,
        List<Coverage> coverage,
        List<HazardRule> hazards) {}
