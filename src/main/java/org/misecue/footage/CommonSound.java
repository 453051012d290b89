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
 * most places, and only where no second offset does as well. What time codes say is tried first, and believed where the sound
 * cannot tell: films of two days may lie on the same hours.
 */
public final class CommonSound {

    /** One frame because shutters are not in step, one for the sound's way and what cameras add to it; no source. */
    private static final int FRAMES = 2;

    private static final Duration STEP = Duration.ofSeconds(1).dividedBy(Levels.A_SECOND);

    private final Listened first;
    private final Listened second;
    private final Excerpts one;
    private final Excerpts two;

    /** What is known of a film by listening to it once. */
    public record Listened(Path film, FilmInfo info, Levels levels) {}

    private CommonSound(Listened first, Listened second, Excerpts one, Excerpts two) {
        this.first = first;
        this.second = second;
        this.one = one;
        this.two = two;
    }

    /**
     * Brings two films together.
     *
     * @throws org.misecue.notice.BadInput if a film cannot be used
     */
    public static Beside beside(Listened first, Listened second) {
        try (Excerpts one = new Excerpts(first.film());
                Excerpts two = new Excerpts(second.film())) {
            CommonSound sound = new CommonSound(first, second, one, two);
            return ClockOfDay.offset(first.info(), second.info())
                    .map(offset -> sound.ask(offset.later()))
                    .orElseGet(() -> Beside.of(sound.find()));
        }
    }

    private Beside ask(Duration byTimecode) {
        Testimony testimony = testimony(byTimecode);
        Optional<Offset> heard = testimony
                .fit()
                .map(fit -> fit.offset(frame().dividedBy(2), BigDecimal.ONE))
                .filter(offset -> agrees(offset, byTimecode))
                .or(this::find);
        if (heard.filter(offset -> agrees(offset, byTimecode)).isPresent()) {
            return Beside.of(heard.map(offset -> offset.startingAt(byTimecode)));
        }
        return heard.isPresent() || testimony.denies()
                ? new Beside(heard, Optional.of(byTimecode))
                : Beside.of(Optional.of(new Offset(byTimecode, Duration.ZERO, new Offset.ByTimecode(true))));
    }

    private boolean agrees(Offset bySound, Duration byTimecode) {
        return bySound.later().minus(byTimecode).abs().compareTo(frame().multipliedBy(FRAMES)) <= 0;
    }

    private Testimony testimony(Duration byTimecode) {
        int later = Math.toIntExact(byTimecode.dividedBy(STEP));
        List<Spot> spots = Spot.spread(first.levels(), second.levels(), later);
        List<Spot.Heard> heard = new ArrayList<>();
        int clear = 0;
        int alike = 0;
        for (Spot spot : spots) {
            Optional<Spot.Heard> here = spot.listen((long) later * Levels.STEP, one, two);
            here.ifPresent(heard::add);
            if (spot.unrest(first.levels(), second.levels(), later) >= Testimony.CLEAR) {
                clear++;
                alike += here.isPresent() ? 1 : 0;
            }
        }
        return new Testimony(Fit.of(heard, spots.size()), clear, alike);
    }

    /** Empty where it is not known whether and how they ran together. */
    private Optional<Offset> find() {
        List<Shift> shifts = Shift.likeliest(first.levels(), second.levels());
        List<Fit> fits = new ArrayList<>();
        double clearness = 0;
        for (Shift shift : shifts) {
            List<Spot> spots = Spot.spread(first.levels(), second.levels(), shift.later());
            Optional<Fit> fit = listen(spots, (long) shift.later() * Levels.STEP);
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
        if (fits.size() != 1) {
            return Optional.empty();
        }
        return Optional.of(fits.get(0).offset(frame().dividedBy(2), rounded(clearness)));
    }

    private Optional<Fit> listen(List<Spot> spots, long later) {
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
    private Duration frame() {
        return frame(first).compareTo(frame(second)) > 0 ? frame(first) : frame(second);
    }

    private static Duration frame(Listened film) {
        return film.info().picture().map(picture -> picture.rate().startOf(1)).orElse(Duration.ofMillis(40));
    }

    private static BigDecimal rounded(double clearness) {
        return BigDecimal.valueOf(clearness).setScale(2, RoundingMode.HALF_EVEN);
    }
}
