/**
 * The shot list, from the method and the templates of {@code shot-templates/}. {@link org.misecue.shots.ShotPlanner} is
 * the way in and gives a {@link org.misecue.shots.ShotPlan}. {@link org.misecue.shots.ShotTemplates} finds a technique's
 * template, the episode's own before the program's; {@code StepActions} gives each ingredient to the action it goes in
 * with. {@code ShotsJson}, {@code ShotsCsv}, {@code ShotsText} and {@code ShotsPage} write the list down.
 */
@NullMarked
package org.misecue.shots;

import org.jspecify.annotations.NullMarked;
