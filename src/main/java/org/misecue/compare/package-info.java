/**
 * Written against spoken: one verdict per written quantity, with its evidence. {@code Comparer} is the way in and gives
 * a {@link org.misecue.compare.Comparison}; {@link org.misecue.compare.Findings} puts it in the order in which a producer
 * works, for the page and the text; a {@link org.misecue.compare.Journey} tells how one of them came
 * about. A wrong quantity must never be reported as agreeing.
 *
 * <p>Where an amount goes is weighed by {@code LineScores}; what it does to those before it is told by the rules that
 * {@code Roles} lists, in the order in which they are asked; {@code Ledger} folds them. {@code SlipOfTongue} knows how far
 * people misspeak; when all is heard, {@code SecondLook} and {@code MissedSettings} look once more for what got nothing.
 */
@NullMarked
package org.misecue.compare;

import org.jspecify.annotations.NullMarked;
