package org.misecue.search;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.misecue.search.Scope.Found;

/**
 * Where most of what is wanted is said within half a minute, if no passage has all of it: somebody names the currants,
 * talks of the weather, and tips them in.
 */
final class Nearby {

    private static final Duration REACH = Duration.ofSeconds(30);
    /** What is said in another passage counts so much, and half of that at the end of the reach. */
    private static final double ELSEWHERE = 0.7;
    /** What is done is said while it is done; what it is done with may have been named before. */
    private static final double DONE_ELSEWHERE = 0.3;
    /** Somebody who remembers what was done looks for that. */
    private static final double DONE = 1.5;

    /** So many passages are looked at for each thing that is wanted. */
    private static final int LOOKED_AT = 60;

    private final IndexSearcher searcher;
    private final Vocabulary words;
    private final Scope scope;
    private final Map<Integer, Said> passages = new LinkedHashMap<>();

    Nearby(IndexSearcher searcher, Vocabulary words, Scope scope) {
        this.searcher = searcher;
        this.words = words;
        this.scope = scope;
    }

    /** A passage in which something of it is said. */
    record Said(Found found, Window window) {

        /** How much less something counts that is said there, beside the same here; nothing where it is too far. */
        double share(Said there, boolean doing) {
            boolean elsewhere = !found.episode().equals(there.found.episode())
                    || !window.passage().source().equals(there.window.passage().source());
            long apart = Math.abs(start() - there.start());
            if (elsewhere || apart > REACH.toMillis()) {
                return 0;
            }
            return found.document() == there.found.document()
                    ? 1
                    : (doing ? DONE_ELSEWHERE : ELSEWHERE) * (1 - 0.5 * apart / REACH.toMillis());
        }

        private long start() {
            return window.passage().start().toMillis();
        }
    }

    /** Where one thing is said. */
    private record Each(Wanted wanted, List<Said> said) {}

    /** Best first; the passages themselves, each with what is said around it in its score. */
    List<Said> best(List<Wanted> plan, List<Query> within) throws IOException {
        List<Each> each = new ArrayList<>();
        List<Query> queries = new Queries(words, Terms.SAID, BySound.ALL).each(plan, within);
        for (int i = 0; i < plan.size(); i++) {
            List<Said> said = new ArrayList<>();
            for (Found found : scope.best(searcher, queries.get(i), LOOKED_AT)) {
                said.add(new Said(found, passage(found).window()));
            }
            each.add(new Each(plan.get(i), said));
        }
        return passages.values().stream()
                .map(here -> new Said(here.found().scoring(around(here, each)), here.window()))
                .sorted(Comparator.comparingDouble((Said said) -> -said.found().score()))
                .toList();
    }

    private static double around(Said here, List<Each> each) {
        return each.stream()
                .mapToDouble(one -> (one.wanted().doing() ? DONE : 1)
                        * one.said().stream()
                                .mapToDouble(there -> there.found().score()
                                        * here.share(there, one.wanted().doing()))
                                .max()
                                .orElse(0))
                .sum();
    }

    private Said passage(Found found) throws IOException {
        Said known = passages.get(found.document());
        if (known == null) {
            known = new Said(found, WindowDocument.window(searcher, found.document()));
            passages.put(found.document(), known);
        }
        return known;
    }
}
