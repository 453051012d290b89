/**
 * What viewers were told that they may do otherwise: substitutions that were offered on camera, with their amounts and
 * moments.
 */
@NullMarked
package org.misecue.offers;

import org.jspecify.annotations.NullMarked;
