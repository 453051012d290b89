package org.misecue.desk.counter;

import java.util.concurrent.atomic.AtomicLong;

/**
 * Numbers answers in the order in which what they show was looked up. They may overtake each other on their way, and a page
 * puts no older one in the place of a newer one ({@code assets/steady.js}).
 */
public final class Turn {

    /** Later than those of a desk that was open before, for pages that still are. */
    private static final AtomicLong LAST = new AtomicLong(System.currentTimeMillis() * 1000);

    private Turn() {}

    /** The next one; take it before anything is looked up. */
    public static long next() {
        return LAST.incrementAndGet();
    }
}
