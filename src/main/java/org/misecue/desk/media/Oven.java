package org.misecue.desk.media;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.misecue.episode.Episode;
import org.misecue.notice.BadInput;
import org.misecue.worktop.Proxies;

/** Makes proxies, one at a time; those that wait stand at nought percent. */
final class Oven {

    private final Proxies proxies;
    private final Map<Path, Batch> batches = new ConcurrentHashMap<>();
    private final ExecutorService heat = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "oven");
        thread.setDaemon(true);
        return thread;
    });

    /** One film on its way. */
    private static final class Batch {
        volatile int percent;
        volatile boolean stopped;
        volatile String wrong = "";
    }

    Oven(Proxies proxies) {
        this.proxies = proxies;
    }

    /** Begins a proxy, unless it is being made already. */
    void begin(Episode episode, Path film, Duration length) {
        batches.compute(film, (key, before) -> {
            if (before != null && !before.stopped && before.wrong.isEmpty()) {
                return before;
            }
            Batch batch = new Batch();
            heat.execute(() -> make(episode, film, length, batch));
            return batch;
        });
    }

    private void make(Episode episode, Path film, Duration length, Batch batch) {
        try {
            if (!batch.stopped) {
                proxies.make(episode, film, at -> {
                    batch.percent = (int) Math.min(99, at.toMillis() * 100 / Math.max(1, length.toMillis()));
                    return !batch.stopped;
                });
            }
            batches.remove(film, batch);
        } catch (BadInput e) {
            batch.wrong = String.valueOf(e.getMessage());
        } catch (RuntimeException e) {
            batch.wrong = "The copy came to nothing; this is a fault of misecue: " + e;
        }
    }

    /** Stops it; what is there of it is thrown away. */
    void stop(Path film) {
        Batch batch = batches.remove(film);
        if (batch != null) {
            batch.stopped = true;
        }
    }

    /** How far it is; empty where none is being made. */
    Optional<Integer> percent(Path film) {
        return Optional.ofNullable(batches.get(film))
                .filter(batch -> batch.wrong.isEmpty())
                .map(batch -> batch.percent);
    }

    /** Why the last came to nothing; empty where it did not. */
    String wrong(Path film) {
        Batch batch = batches.get(film);
        return batch == null ? "" : batch.wrong;
    }

    /** Leaves nothing half done behind. */
    void close() {
        batches.keySet().forEach(this::stop);
        heat.shutdown();
        try {
            heat.awaitTermination(5, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
