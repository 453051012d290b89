package org.misecue.recipe;

import java.time.Duration;
import java.util.Optional;
import org.misecue.quantity.Quantity;

/**
 * Time in which the food needs nobody.
 *
 * @param what goes on: "bake", "cool", "prove"; empty where the method does not say
 * @param least the shorter end of what is written
 * @param most the longer end; the same as {@code least} where one time is written
 * @param where the food is meanwhile
 * @param oven how hot the oven is, where it is in one that has a figure
 * @param stated whether the method gives the time; else it is the usual one, from {@code waits.csv}
 */
public record Wait(String what, Duration least, Duration most, Where where, Optional<Quantity> oven, boolean stated) {

    /** Where food waits. */
    public enum Where {
        OVEN,
        FRIDGE,
        FREEZER,
        ROOM
    }
}
