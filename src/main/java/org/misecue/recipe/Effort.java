package org.misecue.recipe;

import java.time.Duration;
import java.util.List;
import org.misecue.quantity.Household;
import tech.units.indriya.function.RationalNumber;

/**
 * Estimates how long a step keeps somebody busy and how long it runs by itself. Times that are stated count as stated
 * (the longer end of a range); the rest is the table's (common practice, no source).
 *
 * @param handsOn somebody is busy
 * @param unattended nobody is needed
 */
record Effort(Duration handsOn, Duration unattended) {

    private static final Duration AT_LEAST = Duration.ofMinutes(1);
    /** From the evening to the morning (common practice, no source). */
    private static final Duration NIGHT = Duration.ofHours(8);

    private static final Cued OVEN = Cued.inAnyCase("\\boven\\b");

    private static final Cued OVERNIGHT = Cued.inAnyCase("\\bover\\h?night\\b(?!\\h+(?:oats|starter|sponge))");

    static Effort of(Sightings step, List<Setting> settings) {
        List<Setting> times = settings.stream()
                .filter(setting -> setting.kind() == Setting.Kind.DURATION)
                .toList();
        Duration alone = sum(times, true, step.wording());
        boolean night = alone.isZero() && OVERNIGHT.standsIn(step.wording());
        Duration stated = sum(times, false, step.wording());
        List<Techniques.Technique> beside = stated.isZero() ? List.of() : step.beside();
        Duration reckoned = step.techniques().stream()
                .filter(technique -> technique.alone() || !isStated(technique, times))
                .filter(technique -> !beside.contains(technique))
                .map(Techniques.Technique::hands)
                .reduce(Duration.ZERO, Duration::plus);
        Duration hands = stated.plus(reckoned);
        return new Effort(hands.compareTo(AT_LEAST) < 0 ? AT_LEAST : hands, night ? NIGHT : alone);
    }

    private static boolean isStated(Techniques.Technique technique, List<Setting> times) {
        return times.stream().anyMatch(time -> time.what().equals(technique.key()));
    }

    private static Duration sum(List<Setting> times, boolean alone, Wording text) {
        return times.stream()
                .filter(time -> runsAlone(time, text) == alone)
                .map(Effort::minutes)
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** Nuts toast by themselves in an oven, and under a watchful eye in a pan. */
    static boolean runsAlone(Setting time, Wording text) {
        return Techniques.standard().runsAlone(time.what()) || (time.what().equals("toast") && OVEN.standsIn(text));
    }

    private static Duration minutes(Setting setting) {
        long seconds = setting.quantity()
                .mostInBase(Household.METRIC)
                .map(value -> value.multiply(RationalNumber.of(60, 1)).longValue())
                .orElse(0L);
        return Duration.ofSeconds(seconds);
    }
}
