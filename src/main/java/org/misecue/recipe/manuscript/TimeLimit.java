package org.misecue.recipe.manuscript;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Reads on a thread of its own, which can be left behind: libraries do not ask whether they should stop. */
final class TimeLimit {

    /** A recipe takes less than one second; after this the document is built to keep its reader busy. */
    static final Duration LONGEST = Duration.ofSeconds(20);

    private TimeLimit() {}

    /**
     * What the reading answers, and whatever it throws.
     *
     * @throws org.misecue.notice.BadInput if it has not ended within the limit
     */
    static <T> T within(Duration limit, Document document, Supplier<T> reading) {
        FutureTask<T> task = new FutureTask<>(reading::get);
        Thread thread = new Thread(task, "reading " + document.name());
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            thread.interrupt();
            throw document.refuse("the document takes too long to read; paste the recipe into a text file.", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw document.refuse("reading was stopped; try again.", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException thrown ? thrown : new IllegalStateException(e);
        }
    }
}
