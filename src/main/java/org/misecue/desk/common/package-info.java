/**
 * The stations that belong to no one of the three people: what the pages look like ({@code Assets}), the first page, the way
 * in for guests, whether something changed since a page was drawn ({@code Pulse}), and what is said when something is wrong
 * ({@code Faults}).
 */
@NullMarked
package org.misecue.desk.common;

import org.jspecify.annotations.NullMarked;
