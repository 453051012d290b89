package org.misecue.shots;

import java.util.List;

/**
 * A hazard of a technique and when it is one.
 *
 * @param holds foods, such as "sugar" or "raw egg", of which one must be in the mixture; empty for always
 */
record HazardRule(Hazard hazard, List<String> holds) {}
