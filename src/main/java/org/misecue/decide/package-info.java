/**
 * What is to be decided before a film and its recipe go out, and what follows from what was decided. A
 * {@link org.misecue.decide.Docket} holds every {@link org.misecue.decide.Matter} with its state; from it come the lists of
 * pick-ups for the presenter and of fixes for the editor, and the sheet that the producer signs.
 */
@NullMarked
package org.misecue.decide;

import org.jspecify.annotations.NullMarked;
