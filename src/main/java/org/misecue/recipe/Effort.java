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

    static Effort of(List<Techniques.Technique> techniques, List<Setting> settings) {
        Duration hands = Duration.ZERO;
        Duration alone = Duration.ZERO;
        for (Setting setting : settings) {
            if (setting.kind() == Setting.Kind.DURATION) {
                if (Techniques.standard().runsAlone(setting.what())) {
                    alone = alone.plus(minutes(setting));
                } else {
                    hands = hands.plus(minutes(setting));
                }
            }
        }
        for (Techniques.Technique technique : techniques) {
            boolean stated =
                    settings.stream().anyMatch(setting -> setting.what().equals(technique.key()) && !technique.alone());
            hands = stated ? hands : hands.plus(technique.hands());
        }
        return new Effort(hands.compareTo(AT_LEAST) < 0 ? AT_LEAST : hands, alone);
    }

    private static Duration minutes(Setting setting) {
        long seconds = setting.quantity()
                .mostInBase(Household.METRIC)
                .map(value -> value.multiply(RationalNumber.of(60, 1)).longValue())
                .orElse(0L);
        return Duration.ofSeconds(seconds);
    }
}
