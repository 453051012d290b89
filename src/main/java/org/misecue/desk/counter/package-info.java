/**
 * What all stations of the desk share. {@link org.misecue.desk.counter.Counter} knows the episodes;
 * {@link org.misecue.desk.counter.OpenEpisode} is one of them, worked out from its files as they are now;
 * {@link org.misecue.desk.counter.Simmering} keeps slow work going while the page says what is being done;
 * {@link org.misecue.desk.counter.Answer} gives pages and pieces of them. A {@link org.misecue.desk.counter.Station} is a
 * part of the desk with addresses of its own. Nothing is kept here that is not in the episode's folder.
 */
@NullMarked
package org.misecue.desk.counter;

import org.jspecify.annotations.NullMarked;
