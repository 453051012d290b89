package org.misecue.shown;

import java.time.Duration;
import java.util.List;

/** Lines that stood together at one place, from when to when; their boxes are in the small pictures. */
record Reading(Duration from, Duration to, List<ReadLine> lines) {}
