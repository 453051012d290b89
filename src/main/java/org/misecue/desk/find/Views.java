package org.misecue.desk.find;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.footage.Beside;
import org.misecue.footage.Offset;
import org.misecue.worktop.Cameras;
import org.misecue.worktop.Doubts;
import org.misecue.worktop.Worktop;

/**
 * What other cameras saw while a film ran.
 *
 * @param all one for each film that is laid beside it
 * @param notes on films that are not, though their time codes say so
 */
public record Views(List<View> all, List<String> notes) {

    private static final Duration HOUR = Duration.ofHours(1);

    /**
     * A film beside another.
     *
     * @param film that ran meanwhile
     * @param zero what its clock shows at the other's zero, in seconds; it may not run yet
     * @param pace how much of its clock goes by in a second of the other's
     * @param doubt what to know of how it was laid
     */
    public record View(Film film, BigDecimal zero, BigDecimal pace, Optional<String> doubt) {

        static View of(Film film, Offset offset, Optional<String> doubt) {
            Duration zero = offset.inSecond(Duration.ZERO);
            long hour = offset.inSecond(HOUR).minus(zero).toNanos();
            BigDecimal pace =
                    BigDecimal.valueOf(hour).divide(BigDecimal.valueOf(HOUR.toNanos()), 12, RoundingMode.HALF_EVEN);
            return new View(film, BigDecimal.valueOf(zero.toNanos(), 9), pace, doubt);
        }
    }

    /** @throws org.misecue.notice.BadInput if a film cannot be used */
    static Views beside(Film shown, List<Film> others, Worktop worktop, Cameras cameras) {
        List<View> all = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Film other : others) {
            Beside beside = cameras.beside(path(worktop, shown), path(worktop, other));
            Optional<String> doubt = Doubts.of(beside, shown.name());
            beside.offset().ifPresent(offset -> all.add(View.of(other, offset, doubt)));
            if (beside.offset().isEmpty() && beside.denied().isPresent()) {
                notes.add(other.name() + ": " + Doubts.unlaid(beside, shown.name()) + ".");
            }
        }
        return new Views(List.copyOf(all), List.copyOf(notes));
    }

    private static Path path(Worktop worktop, Film film) {
        return worktop.episode().folder().resolve(film.name());
    }
}
