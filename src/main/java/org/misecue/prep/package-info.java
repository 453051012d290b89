/**
 * Mise en place: bowls for each component and moment, jobs with lead times, kit, shopping, labels. {@code PrepPlanner} is the way in.
 */
@NullMarked
package org.misecue.prep;

import org.jspecify.annotations.NullMarked;
