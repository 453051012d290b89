package org.misecue.spoken;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Things heard, by the word they begin at, found without looking at all of them. */
public final class Places<T> {

    private final List<T> heard;
    private final int[] starts;

    private Places(List<T> heard, ToIntFunction<T> start) {
        this.heard = heard;
        this.starts = heard.stream().mapToInt(start).toArray();
    }

    /**
     * @param names in the order of the stream
     */
    public static Places<NameHit> ofNames(List<NameHit> names) {
        return new Places<>(names, NameHit::start);
    }

    /**
     * @param quantities in the order of the stream
     */
    public static Places<SpokenQuantity> ofQuantities(List<SpokenQuantity> quantities) {
        return new Places<>(quantities, SpokenQuantity::start);
    }

    /** Those that begin in {@code [from, to)}, in order. */
    public List<T> in(int from, int to) {
        int first = first(from);
        return heard.subList(first, Math.max(first, first(to)));
    }

    /** The one that begins at the index. */
    public Optional<T> at(int index) {
        List<T> here = in(index, index + 1);
        return here.isEmpty() ? Optional.empty() : Optional.of(here.get(0));
    }

    /** The first that begins at the index or later. */
    public Optional<T> from(int index) {
        int first = first(index);
        return first < heard.size() ? Optional.of(heard.get(first)) : Optional.empty();
    }

    /** The last that begins before the index. */
    public Optional<T> before(int index) {
        int last = first(index) - 1;
        return last >= 0 ? Optional.of(heard.get(last)) : Optional.empty();
    }

    private int first(int from) {
        int found = Arrays.binarySearch(starts, from);
        return found >= 0 ? found : -found - 1;
    }
}
