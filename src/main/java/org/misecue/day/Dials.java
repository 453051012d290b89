package org.misecue.day;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A dial that is filmed switches its oven on: the bake that it is for follows in the same oven once that is hot, and
 * nothing of another heat is in it then.
 */
final class Dials {

    /** The key of the technique. */
    static final String TECHNIQUE = "heat-oven";

    /** A filmed dial, and the first stretch whose bake it may be for. */
    private record Dial(int work, int stretch) {}

    /** A bake and its stretch. */
    private record Bake(int work, int stretch) {}

    private final List<Dial> dials = new ArrayList<>();
    private final List<Bake> bakes = new ArrayList<>();

    void dial(int work, int stretch) {
        dials.add(new Dial(work, stretch));
    }

    boolean isDial(int work) {
        return dials.stream().anyMatch(dial -> dial.work() == work);
    }

    void bake(int work, int stretch) {
        bakes.add(new Bake(work, stretch));
    }

    /** Ties each dial to the first bake from its stretch on, and no two to one. */
    void tie(Works works) {
        Set<Integer> tied = new HashSet<>();
        for (Dial dial : dials) {
            OptionalInt next = IntStream.range(0, bakes.size())
                    .filter(at -> bakes.get(at).stretch() >= dial.stretch())
                    .findFirst();
            next.ifPresent(at -> {
                int bake = bakes.get(at).work();
                if (tied.add(bake)) {
                    tie(dial.work(), bake, works);
                }
            });
        }
    }

    private static void tie(int dial, int bake, Works works) {
        Work.Heat heat = works.works().get(bake).heat().orElseThrow();
        Work filmed = works.works().get(dial);
        works.works().set(dial, filmed.in(new Work.Heat(heat.celsius(), 0)));
        works.lag(new Lag(dial, bake, heat.heating(), OptionalInt.empty(), Optional.empty()));
        works.limit(new Limit.SameOven(dial, bake));
    }
}
