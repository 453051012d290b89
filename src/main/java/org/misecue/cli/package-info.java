/**
 * The commands. {@link org.misecue.cli.Misecue} is the way in; it knows every other package and is known by none. A file
 * for each command; {@code worktop} works out what they need; {@code Results} and {@code CallSheet} are what {@code make}
 * makes and says; {@code Faults} is how it says that something went wrong.
 */
@NullMarked
package org.misecue.cli;

import org.jspecify.annotations.NullMarked;
