/**
 * Mise en place: bowls for each component and moment, jobs with lead times, kit, shopping, cautions, labels.
 * {@link org.misecue.prep.PrepPlanner} is the way in and gives a {@link org.misecue.prep.PrepPlan}. On the way:
 * {@code ShareOut} divides an ingredient among the steps, {@code BowlSetter} sets the bowls out, {@code JobPlanner},
 * {@code KitList}, {@code ShoppingList} and {@code Cautions} read the plan off recipe and pantry. {@code PrepJson},
 * {@code PrepText}, {@code PrepPage}, {@code LabelPage} and {@code ChecklistPage} write it down;
 * {@code TickList} names what is ticked off. The tables {@code natures.csv},
 * {@code kit.yaml}, {@code packs.csv}, {@code aisles.csv} and {@code cautions.yaml} are in the resources.
 */
@NullMarked
package org.misecue.prep;

import org.jspecify.annotations.NullMarked;
