/**
 * The desk: one local page for presenter, editor and producer over the same files as the commands.
 * {@link org.misecue.desk.Desk} opens and closes it and names its stations, each in a package of its own; {@code door} keeps
 * strangers out, {@code counter} is what the stations share. It shows what the commands know and decides nothing itself.
 */
@NullMarked
package org.misecue.desk;

import org.jspecify.annotations.NullMarked;
