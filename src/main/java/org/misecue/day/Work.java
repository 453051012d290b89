package org.misecue.day;

import java.util.Map;
import java.util.Optional;

/**
 * Something that takes time and cannot be broken off.
 *
 * @param minutes how long, from 0
 * @param takes how much of which means it keeps busy: one presenter, two rings of the hob
 * @param heat the oven that it stands in; empty for what needs none
 * @param setUp the camera set-up that it is filmed in; empty for what is not filmed
 */
record Work(int minutes, Map<String, Integer> takes, Optional<Heat> heat, Optional<String> setUp) {

    /**
     * An oven's heat.
     *
     * @param celsius how hot, so that only bakes of one heat share an oven
     * @param heating minutes that the oven needs to get there; 0 for what only switches it on
     */
    record Heat(int celsius, int heating) {}

    /** What is not needed. */
    static final Work NONE = new Work(0, Map.of(), Optional.empty(), Optional.empty());

    /** The same in an oven of its own or another heat. */
    Work in(Heat other) {
        return new Work(minutes, takes, Optional.of(other), setUp);
    }

    /** Whether it is the turning of an oven's dial: as late as it may be, so that no oven stays hot for nothing. */
    boolean isDial() {
        return heat.isPresent() && setUp.isPresent();
    }

    Work {
        if (minutes < 0) {
            throw new IllegalArgumentException("work of " + minutes + " minutes");
        }
        takes = Map.copyOf(takes);
    }
}
