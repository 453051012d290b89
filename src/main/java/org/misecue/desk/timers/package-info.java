/**
 * The timers that stand on the presenter's pages. {@link org.misecue.desk.timers.TimerBoard} is what of them a page shows;
 * {@link org.misecue.desk.timers.TimerTouch} starts and stops them. They are kept in {@code .misecue/timers.yaml}; every
 * device counts down by itself and rings by itself ({@code assets/timers.js}).
 */
@NullMarked
package org.misecue.desk.timers;

import org.jspecify.annotations.NullMarked;
