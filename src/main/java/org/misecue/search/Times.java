package org.misecue.search;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.misecue.narration.Word;

/** When one word after another begins, to the millisecond. An hour has ten thousand, so none is an object of its own. */
final class Times {

    static final Times NONE = new Times(0);

    private long[] millis;
    private int size;

    /** @param expected how many there will be, about */
    Times(int expected) {
        millis = new long[expected];
    }

    void add(long time) {
        if (size == millis.length) {
            millis = Arrays.copyOf(millis, Math.max(16, 2 * size));
        }
        millis[size++] = time;
    }

    void add(List<Word> words) {
        for (int i = 0; i < words.size(); i++) {
            add(words.get(i).at().toMillis());
        }
    }

    int size() {
        return size;
    }

    boolean isEmpty() {
        return size == 0;
    }

    long millis(int word) {
        return millis[word];
    }

    Duration of(int word) {
        return Duration.ofMillis(millis[word]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Times times && Arrays.equals(millis, 0, size, times.millis, 0, times.size);
    }

    @Override
    public int hashCode() {
        int hash = 1;
        for (int i = 0; i < size; i++) {
            hash = 31 * hash + Long.hashCode(millis[i]);
        }
        return hash;
    }

    @Override
    public String toString() {
        return Arrays.toString(Arrays.copyOf(millis, size));
    }
}
