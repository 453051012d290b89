package org.misecue.search;

import java.util.List;

/**
 * What the index of an archive remembers of an episode, for whoever keeps it fresh.
 *
 * @param stamp of what it was indexed from; says nothing to the index
 * @param notes on what could not be taken from it
 */
public record Shelved(String stamp, List<String> notes) {}
