/**
 * What the presenter needs while weighing. {@link org.misecue.desk.bowls.BowlsStation} has the addresses,
 * {@link org.misecue.desk.bowls.Tray} is what a page shows of the mise en place, {@link org.misecue.desk.bowls.Left} what is
 * left of it. Ticks are those of {@code misecue prep --tick}.
 */
@NullMarked
package org.misecue.desk.bowls;

import org.jspecify.annotations.NullMarked;
