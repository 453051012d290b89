/** Being written. */
@NullMarked
package org.misecue.day;

import org.jspecify.annotations.NullMarked;
