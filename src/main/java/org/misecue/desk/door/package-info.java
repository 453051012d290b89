/**
 * Who may come in. {@link org.misecue.desk.door.Door} looks at every request before anybody else does: it must be meant for
 * this desk, come from one of its own pages, and bring a key. {@link org.misecue.desk.door.Keys} has two kinds of them: that
 * of the owner, printed in the address, and those of guests, who ask for one with a code when the desk is open to the local
 * network. {@link org.misecue.desk.door.Who} says what each may see.
 */
@NullMarked
package org.misecue.desk.door;

import org.jspecify.annotations.NullMarked;
