/**
 * Claims that somebody makes about a dish, such as "dairy free" or "vegan", held against what is known of its
 * ingredients. misecue makes no such claim itself.
 */
@NullMarked
package org.misecue.claims;

import org.jspecify.annotations.NullMarked;
