package org.misecue.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until a test turns it. */
public final class KitchenClock extends Clock {

    private volatile Instant now;

    private KitchenClock(Instant now) {
        this.now = now;
    }

    /** @param time such as "2026-05-04T08:50" */
    public static KitchenClock at(String time) {
        return new KitchenClock(LocalDateTime.parse(time).toInstant(ZoneOffset.UTC));
    }

    public void turn(Duration on) {
        now = now.plus(on);
    }

    public void set(String time) {
        now = LocalDateTime.parse(time).toInstant(ZoneOffset.UTC);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(now, zone);
    }
}
