package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.misecue.episode.OutFolder;
import org.misecue.footage.Clip;
import org.misecue.footage.Still;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;

/** Pictures and clips of moments, taken from the film on whose clock the narration runs. */
public final class Moments {

    private static final Duration BEFORE = Duration.ofSeconds(2);
    private static final int WIDTH = 960;

    private final Worktop worktop;
    private final OutFolder out;

    public Moments(Worktop worktop) {
        this.worktop = worktop;
        this.out = worktop.episode().out();
    }

    /**
     * A picture of a moment.
     *
     * @return its name within {@code out/}; empty where no film has this moment
     * @throws org.misecue.notice.BadInput if the film cannot be read or is shorter
     */
    public Optional<String> still(Moment moment) {
        return worktop.filmOf(moment.source()).map(film -> picture(film, moment.at()));
    }

    /** A picture of a moment on a film's own clock; as {@link #still(Moment)}. */
    public String picture(Path film, Duration at) {
        String name = "stills/" + name(film, at) + ".png";
        out.make(name, file -> Still.small(film, at, WIDTH, file));
        return name;
    }

    /** A moment cut out, from a little before it to its end; as {@link #still}. */
    public Optional<String> clip(Moment moment, Duration end) {
        return worktop.filmOf(moment.source()).map(film -> piece(film, moment.at(), end));
    }

    /** A moment on a film's own clock, cut out; as {@link #clip(Moment, Duration)}. */
    public String piece(Path film, Duration at, Duration end) {
        String name = "clips/" + name(film, at) + ".mp4";
        Duration from = at.minus(BEFORE);
        out.make(name, file -> Clip.cut(film, from.isNegative() ? Duration.ZERO : from, end, file));
        return name;
    }

    /**
     * The frame on screen at a moment, in its own size.
     *
     * @param at on the film's clock
     * @return its name within {@code out/}
     * @throws org.misecue.notice.BadInput if the film cannot be read or is shorter
     */
    public String still(Path film, Duration at) {
        String name = "stills/" + worktop.resultName(film) + "-" + exact(at) + ".png";
        out.make(name, file -> Still.at(film, at, file));
        return name;
    }

    /** What is between two marks, exact to the frame; as {@link #still(Path, Duration)}. */
    public String clip(Path film, Duration in, Duration end) {
        String name = "clips/" + worktop.resultName(film) + "-" + exact(in) + "-" + exact(end) + ".mp4";
        out.make(name, file -> Clip.cut(film, in, end, file));
        return name;
    }

    private String name(Path film, Duration at) {
        return worktop.resultName(film) + "-" + Clock.hms(at).replace(':', '.');
    }

    /** To the thousandth, because two frames may lie in one second. */
    private static String exact(Duration at) {
        return "%d.%02d.%02d.%03d".formatted(at.toHours(), at.toMinutesPart(), at.toSecondsPart(), at.toMillisPart());
    }
}
