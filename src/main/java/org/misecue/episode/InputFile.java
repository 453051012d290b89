package org.misecue.episode;

/**
 * A file that an episode is made of, as it is now.
 *
 * @param name relative to the episode
 * @param bytes its length
 * @param sha256 of its content, in hexadecimal digits
 */
public record InputFile(String name, long bytes, String sha256) {}
