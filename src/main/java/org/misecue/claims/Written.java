package org.misecue.claims;

import org.misecue.notice.Place;

/** A text that is to be published beside the film, such as a paragraph of the description, and where it stands. */
public record Written(Place place, String text) {}
