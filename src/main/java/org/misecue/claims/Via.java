package org.misecue.claims;

/** How a claim reaches the viewer. */
public enum Via {
    SPOKEN,
    SHOWN,
    WRITTEN
}
