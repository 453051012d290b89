package org.misecue.worktop;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is worked out when it is first asked for, and once, whoever asks. Values may ask for one another as long as
 * they never go round in a circle; then two who ask at the same time cannot wait for each other.
 */
final class Lazy<T> implements Supplier<T> {

    private final Supplier<T> source;
    private @Nullable T value;

    private Lazy(Supplier<T> source) {
        this.source = source;
    }

    static <T> Lazy<T> of(Supplier<T> source) {
        return new Lazy<>(source);
    }

    @Override
    public synchronized T get() {
        T known = value;
        if (known == null) {
            known = source.get();
            value = known;
        }
        return known;
    }
}
