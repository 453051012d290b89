package org.misecue.shots;

import org.misecue.prep.Wording;

/**
 * A reminder for the people on set.
 *
 * @param what the thing to mind: "raw egg"
 * @param care what to do about it, a sentence
 */
public record Hazard(String what, String care) {

    /** "Raw egg: nobody tastes." */
    @Override
    public String toString() {
        return Wording.upperFirst(what) + ": " + care;
    }
}
