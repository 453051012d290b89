package org.misecue.footage;

import java.time.Duration;
import org.misecue.notice.BadInput;

/** Moments on a film's clock. */
final class Moments {

    private Moments() {}

    /** Refuses a moment that the film does not have. */
    static void check(Reel reel, Duration at) {
        if (at.isNegative() || at.compareTo(reel.length()) >= 0) {
            throw new BadInput(
                    reel.place(),
                    "the film has no moment %s, because it lasts %s; check that narration and film belong together"
                            .formatted(text(at), text(reel.length())));
        }
    }

    /** {@code 8:05.250}, with hours where there are any. */
    static String text(Duration time) {
        String sign = time.isNegative() ? "−" : "";
        Duration size = time.abs();
        String rest = "%02d.%03d".formatted(size.toSecondsPart(), size.toMillisPart());
        return size.toHours() == 0
                ? sign + size.toMinutes() + ":" + rest
                : "%s%d:%02d:%s".formatted(sign, size.toHours(), size.toMinutesPart(), rest);
    }
}
