package org.misecue.desk.counter;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Slow work that goes on by itself. Whoever needs its result waits a little and then comes again, so that a page can say
 * meanwhile what is being done.
 *
 * @param <T> what comes of it
 */
public final class Simmering<T> {

    /** Two rings: a day can be planned while a film is read; more at once would only be slower each. */
    private static final ExecutorService HOB = Executors.newFixedThreadPool(2, work -> {
        Thread thread = new Thread(work, "simmering");
        thread.setDaemon(true);
        return thread;
    });

    private final Supplier<T> work;
    private @Nullable CompletableFuture<T> begun;

    /** @param work goes on in a thread of its own */
    public Simmering(Supplier<T> work) {
        this.work = work;
    }

    /**
     * The result if it is there, or comes within this time; the work begins with the first who asks.
     *
     * @throws RuntimeException that the work ended with
     */
    public Optional<T> within(Duration patience) {
        try {
            return Optional.of(begun().get(patience.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException | CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private synchronized CompletableFuture<T> begun() {
        CompletableFuture<T> now = begun;
        if (now == null) {
            now = CompletableFuture.supplyAsync(work, HOB);
            begun = now;
        }
        return now;
    }
}
