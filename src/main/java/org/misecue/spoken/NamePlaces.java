package org.misecue.spoken;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Names by where they begin, found without looking at all of them. */
public final class NamePlaces {

    private final List<NameHit> names;
    private final int[] starts;

    /**
     * @param names in the order of the stream
     */
    public NamePlaces(List<NameHit> names) {
        this.names = names;
        this.starts = names.stream().mapToInt(NameHit::start).toArray();
    }

    /** The names that begin in {@code [from, to)}, in order. */
    public List<NameHit> in(int from, int to) {
        int first = first(from);
        return names.subList(first, Math.max(first, first(to)));
    }

    /** The name that begins at the index. */
    public Optional<NameHit> at(int index) {
        List<NameHit> here = in(index, index + 1);
        return here.isEmpty() ? Optional.empty() : Optional.of(here.get(0));
    }

    private int first(int from) {
        int found = Arrays.binarySearch(starts, from);
        return found >= 0 ? found : -found - 1;
    }
}
