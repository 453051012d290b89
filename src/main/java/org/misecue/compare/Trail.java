package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.compare.Attacher.Place;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.SpokenQuantity;

/**
 * What was decided about each amount on its way to a verdict, kept by the word at which the amount begins; a {@link Journey}
 * tells it. The rules only note here and never read it, so that explaining cannot change a verdict.
 */
final class Trail {

    /** An amount, or words that point at one, as it was met; the amount is empty for what points. */
    record Passage(int start, int end, Optional<SpokenQuantity> said) {}

    /**
     * What the verdict on a line rests on.
     *
     * @param counted the mentions that count, in the size of the written batch
     * @param standing what the ledger made of them
     */
    record Ruling(List<Mention> counted, List<Ledger.Entry> standing, Grounds grounds) {}

    /** One amount held against one written figure. */
    record Held(Quantity figure, Quantity said, Verdict verdict) {}

    private final List<Passage> passages = new ArrayList<>();
    private final Map<Integer, List<Place>> places = new HashMap<>();
    private final Map<Integer, List<String>> notes = new HashMap<>();
    private final Map<Integer, String> links = new HashMap<>();
    private final Map<Integer, Ruling> rulings = new HashMap<>();
    private final Map<Integer, List<Held>> held = new HashMap<>();

    void met(SpokenQuantity said) {
        passages.add(new Passage(said.start(), said.end(), Optional.of(said)));
    }

    void met(Pointer pointer) {
        int last = passages.size() - 1;
        if (last >= 0 && passages.get(last).start() == pointer.start()) {
            passages.remove(last); // a share that turned out to point
        }
        passages.add(new Passage(pointer.start(), pointer.end(), Optional.empty()));
    }

    /** How the amount at a word came to be another than was said, or why it went nowhere: a clause in small letters. */
    void note(int start, String what) {
        notes.computeIfAbsent(start, k -> new ArrayList<>()).add(what);
    }

    /** The places that an amount might have gone to. */
    void weighed(SpokenQuantity said, List<Place> all) {
        places.computeIfAbsent(said.start(), k -> new ArrayList<>()).addAll(all);
    }

    /** By what an amount found its line where no name did it. */
    void linked(SpokenQuantity said, String by) {
        links.put(said.start(), by);
    }

    void ruled(int line, Ruling ruling) {
        rulings.put(line, ruling);
    }

    void held(int line, Held one) {
        held.computeIfAbsent(line, k -> new ArrayList<>()).add(one);
    }

    List<Passage> passages() {
        return List.copyOf(passages);
    }

    List<Place> places(int start) {
        return places.getOrDefault(start, List.of());
    }

    List<String> notes(int start) {
        return notes.getOrDefault(start, List.of());
    }

    Optional<String> link(int start) {
        return Optional.ofNullable(links.get(start));
    }

    /** Empty for a line of which nothing was said. */
    Optional<Ruling> ruling(int line) {
        return Optional.ofNullable(rulings.get(line));
    }

    List<Held> held(int line) {
        return held.getOrDefault(line, List.of());
    }
}
