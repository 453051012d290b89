package org.misecue.day;

import java.util.List;

/**
 * One row of the call sheet before it has a time.
 *
 * @param id from 1, in the order of the method; stays the same when the day is planned again
 * @param kind what sort of work
 * @param what in a person's words
 * @param step of the method; 0 for none
 * @param shots numbers of the shots filmed in it
 * @param setUp the camera set-up; empty where nothing is filmed
 * @param with equipment that it keeps busy, without the oven's number: "hob", "mixer", "fridge"
 */
record Task(int id, Entry.Kind kind, String what, int step, List<Integer> shots, String setUp, List<String> with) {}
