/**
 * The editor's page: from half-remembered words to the moment in the film. {@link org.misecue.desk.find.FindPage} serves it;
 * {@code Finder} finds in an episode and keeps its index as new as its files, {@code Rolls} holds what can be played or read
 * along, a {@code Roll} for each film and narration, and {@code FoundMoment} is a hit as it stands on the page. What happens
 * in the browser is in {@code assets/find.js}; without it the page still finds, by its form and its links.
 */
@NullMarked
package org.misecue.desk.find;

import org.jspecify.annotations.NullMarked;
