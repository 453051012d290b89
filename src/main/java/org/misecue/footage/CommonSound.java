package org.misecue.footage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How two films lie to one another by what both heard. First their levels tell a few likely offsets; then each of these is
 * tried at places all over the time in which both would have run. It counts only where the very same sound is there at
 * most places, and only where no second offset does as well.
 */
public final class CommonSound {

    private CommonSound() {}

    /** What is known of a film by listening to it once. */
    public record Listened(Path film, FilmInfo info, Levels levels) {}

    /**
     * Brings two films together.
     *
     * @return empty where it is not known whether and how they ran together
     * @throws org.misecue.notice.BadInput if a film cannot be used
     */
    public static Optional<Offset> offset(Listened first, Listened second) {
        List<Shift> shifts = Shift.likeliest(first.levels(), second.levels());
        List<Fit> fits = new ArrayList<>();
        double clearness = 0;
        try (Excerpts one = new Excerpts(first.film());
                Excerpts two = new Excerpts(second.film())) {
            for (Shift shift : shifts) {
                List<Spot> spots = Spot.spread(first.levels(), second.levels(), shift.later());
                Optional<Fit> fit = listen(spots, (long) shift.later() * Levels.STEP, one, two);
                if (fit.isPresent()) {
                    fits.add(fit.get());
                    double rival = shifts.stream()
                            .filter(other -> !other.equals(shift))
                            .mapToDouble(Shift::strength)
                            .max()
                            .orElse(Shift.FAINTEST);
                    clearness = shift.strength() / rival;
                }
            }
        }
        if (fits.size() != 1) {
            return Optional.empty();
        }
        return Optional.of(fits.get(0).offset(halfFrame(first, second), rounded(clearness)));
    }

    private static Optional<Fit> listen(List<Spot> spots, long later, Excerpts one, Excerpts two) {
        List<Spot.Heard> heard = new ArrayList<>();
        int missed = 0;
        for (Spot spot : spots) {
            if (!Fit.canHold(missed, spots.size())) {
                return Optional.empty();
            }
            Optional<Spot.Heard> here = spot.listen(later, one, two);
            here.ifPresent(heard::add);
            missed += here.isPresent() ? 0 : 1;
        }
        return Fit.of(heard, spots.size());
    }

    /** Of the film whose frames last longer; 25 a second where only sound was recorded. */
    private static Duration halfFrame(Listened first, Listened second) {
        return frame(first).compareTo(frame(second)) > 0
                ? frame(first).dividedBy(2)
                : frame(second).dividedBy(2);
    }

    private static Duration frame(Listened film) {
        return film.info().picture().map(picture -> picture.rate().startOf(1)).orElse(Duration.ofMillis(40));
    }

    private static BigDecimal rounded(double clearness) {
        return BigDecimal.valueOf(clearness).setScale(2, RoundingMode.HALF_EVEN);
    }
}
