/**
 * How an episode begins and grows. {@link org.misecue.desk.begin.Begin} opens the addresses: a new episode from a recipe that
 * is dropped on the page, the sample, what an episode is made of, and more files for it. {@code Look} tells what a file is
 * before it is sent, {@code Intake} takes it in: straight onto the disk where it is to lie, whole or not at all, and never
 * over anything. For the owner alone.
 */
@NullMarked
package org.misecue.desk.begin;

import org.jspecify.annotations.NullMarked;
