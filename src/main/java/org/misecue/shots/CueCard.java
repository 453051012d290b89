package org.misecue.shots;

import java.util.List;

/**
 * One page to hold up behind the camera.
 *
 * @param page from 1, of so many {@code pages} for the same shot
 * @param size of the letters, in points
 */
public record CueCard(Shot shot, int page, int pages, int size, List<Saying> sayings) {

    /** "Shot 8 · step 3". */
    public String heading() {
        String step = ShotWords.step(shot);
        return "Shot " + shot.number() + (step.isEmpty() ? "" : " · " + step);
    }

    /** "card 1 of 2"; empty where there is one only. */
    public String part() {
        return pages == 1 ? "" : "card " + page + " of " + pages;
    }
}
