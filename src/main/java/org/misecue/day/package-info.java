/**
 * The order of the filming day. {@link org.misecue.day.DayPlanner} is the way in: it turns the method's stretches, the
 * shots and the kitchen into works with lags between them ({@code DayBuilder}), finds the shortest day by constraint
 * programming ({@code Solver} over {@code ProjectModel}) and writes it down as a call sheet. The solver's side knows
 * nothing of baking: it reads published scheduling problems just as well ({@link org.misecue.day.Psplib}).
 */
@NullMarked
package org.misecue.day;

import org.jspecify.annotations.NullMarked;
