/**
 * The shot list, from the method and the templates of {@code shot-templates/}. {@code ShotPlanner} is the way in.
 */
@NullMarked
package org.misecue.shots;

import org.jspecify.annotations.NullMarked;
