package org.misecue.compare;

import java.util.Optional;
import org.misecue.spoken.NameHit;
import tech.units.indriya.function.RationalNumber;

/**
 * An amount said by pointing at another one, in {@code [start, end)}: "the same again of sugar", "half that", "two percent
 * of the flour".
 *
 * @param factor how many times the other amount it is
 * @param base the ingredient whose amount is pointed at; empty for the amount that was said last
 * @param target the ingredient that gets the amount, where the words name it
 * @param share whether it may as well be a portion of something: "two thirds of it goes in now"
 */
record Pointer(
        int start, int end, RationalNumber factor, Optional<NameHit> base, Optional<NameHit> target, boolean share) {}
