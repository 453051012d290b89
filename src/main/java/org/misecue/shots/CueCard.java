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

    /** Whether it takes more than a line, so that its figure stands on lines of its own. */
    public boolean isWide(Saying saying) {
        return Lettering.lines(saying.words(), size, CueCards.WIDTH) > 1;
    }

    /** "card 1 of 2"; empty where there is one only. */
    public String part() {
        return pages == 1 ? "" : "card " + page + " of " + pages;
    }
}
