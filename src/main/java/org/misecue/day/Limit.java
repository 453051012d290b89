package org.misecue.day;

import java.util.Set;

/** What the clock asks of a project; minutes count from its start. A wish can be told and given up; facts cannot. */
sealed interface Limit {

    /** What a person would call it: "daylight for the hero table until 15:30"; empty for a fact. */
    default String wish() {
        return "";
    }

    /** The works lie between two minutes. */
    record Window(Set<Integer> works, int from, int to, String wish) implements Limit {}

    /** One work begins at its minute. */
    record At(int work, int minute, String wish) implements Limit {}

    /** One of a means is not there for a time. */
    record Away(String means, int from, int to, String wish) implements Limit {}

    /** All hands rest for so many minutes, beginning between two minutes, unless the day is over by the later. */
    record Pause(int earliest, int latest, int minutes, String wish) implements Limit {

        /** One that has been given up. */
        static final Pause NONE = new Pause(0, 0, 0, "");
    }

    /** All works are done by a minute. */
    record DayEnd(int minute, String wish) implements Limit {}

    /** The turning of a dial and the bake that it is for are at the same oven, which keeps its heat between them. */
    record SameOven(int dial, int bake) implements Limit {}

    /** What bakes goes on baking at another heat in the same oven, which changes with it inside. */
    record GoesOn(int first, int second) implements Limit {}

    /** A work is in an oven that is known, from 0. */
    record InOven(int work, int oven) implements Limit {}

    /** A work has begun already. */
    record Begun(int work, int minute) implements Limit {}

    /** A work has not begun yet. */
    record NotBefore(int work, int minute) implements Limit {}
}
