package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/**
 * One search: for all that is asked as it was said; then during the steps that have all of it; then as it sounds; then for
 * words that begin as the last one does; and where nothing of that was said, for any of it, the more near together the
 * better. The steps themselves come last.
 */
final class MomentSearch {

    /** More passages are looked at than are shown, since near repeats become one. */
    private static final int LOOKED_AT_PER_HIT = 3;

    private static final int LOOKED_AT_MOST = 10_000;

    /** What is said while the step is on that has it too is likelier it than what announces it. */
    private static final double IN_ITS_STEP = 1.5;
    /** What is said before the first step and after the last is mostly of what will be or was done. */
    private static final double OUTSIDE_ALL = 0.8;

    private static final int DURING_A_STEP = 3;

    private static final String NO_PROOF =
            "Shown is where the pantry knows of it, by nature or because some makes have it; where nothing is shown, that"
                    + " is no proof that there is none. Read the labels.";

    private final IndexSearcher searcher;
    private final Vocabulary words;
    private final Scope scope;
    private final Set<Query> asked = new HashSet<>();

    MomentSearch(IndexSearcher searcher, Vocabulary words, Scope scope) {
        this.searcher = searcher;
        this.words = words;
        this.scope = scope;
    }

    /** What the recipe or the shot list has, or what stood in the picture. */
    private record Step(Scope.Found found, Window window) {

        boolean isListed() {
            return window.passage().kind() == Passage.Kind.INGREDIENT;
        }

        /** Whether it tells what is done, and so when it is said. */
        boolean isDone() {
            return window.passage().kind() == Passage.Kind.STEP;
        }

        boolean isShown() {
            return window.passage().kind() == Passage.Kind.SHOWN;
        }

        boolean isOn(Hit hit) {
            return isDone()
                    && hit.step() == window.passage().step()
                    && hit.episode().equals(found.episode());
        }
    }

    FindResult find(String query, Ask first, int limit) throws IOException {
        Ask ask = first;
        Folding hits = new Folding(limit);
        List<Hit> written = new ArrayList<>();
        List<Wanted> strict = Plan.strict(ask, searcher, words);
        boolean said = addAll(strict, ask, hits, written);
        if (!said && ask.hasQuotes()) {
            ask = ask.withoutQuotes();
            strict = Plan.strict(ask, searcher, words);
            said = addAll(strict, ask, hits, written);
        }
        if (hits.isFull() || strict.isEmpty()) {
            return result(query, ask, hits, written, Optional.empty());
        }
        Spelling spelling = new Spelling(searcher.getIndexReader(), words);
        List<String> longer = longer(ask, !hits.isEmpty() || !written.isEmpty(), spelling);
        if (!longer.isEmpty()) {
            said |= addAll(
                    Plan.begun(ask, longer, searcher, words), ask, hits, written); // after those with the word itself
        }
        boolean none = hits.isEmpty() && written.isEmpty();
        if (!said) {
            double most = hits.leastScore();
            nearby(Plan.loose(ask, longer, spelling, searcher, words), ask, within(ask), lookedAt(hits), searcher)
                    .forEach(hit -> hits.add(hit.scoring(Math.min(hit.score(), most))));
        }
        if (!hits.isFull()) {
            said(strict, BySound.ALL, List.of(), ask, hits).forEach(hits::add);
        }
        return result(query, ask, hits, written, none ? spelling.corrected(query, ask) : Optional.empty());
    }

    /**
     * What the last word may become when it is written to its end. Over an archive somebody looks while typing; who asks
     * one episode has asked, and only a word that nobody said is taken for the beginning of others.
     */
    private List<String> longer(Ask ask, boolean found, Spelling spelling) throws IOException {
        boolean goesOn = ask.goingOn() && (scope instanceof Scope.Archive || !found && !spelling.isWord(ask.begun()));
        List<String> longer = goesOn ? Beginnings.of(ask.begun(), searcher.getIndexReader()) : List.of();
        if (!longer.isEmpty()) {
            spelling.accept(ask.begun());
        }
        return longer;
    }

    /**
     * @param written gets the steps and shots
     * @return whether somebody said it all in one passage
     */
    private boolean addAll(List<Wanted> plan, Ask ask, Folding hits, List<Hit> written) throws IOException {
        List<Step> steps = steps(plan, ask, hits.limit());
        if (plan.isEmpty()) {
            // Nothing tells these apart; that a recipe lists it is surest.
            steps.stream()
                    .filter(Step::isListed)
                    .flatMap(step -> hit(step, plan, ask).stream())
                    .forEach(hits::add);
        }
        List<Hit> said = said(plan, BySound.NONE, steps, ask, hits);
        said.stream().filter(hit -> !isAnnounced(hit, steps)).forEach(hits::add);
        for (Step step : steps) {
            double score = Math.min(step.found().score(), hits.leastScore());
            if (step.isShown()) {
                hit(step, plan, ask).ifPresent(hit -> hits.add(hit.scoring(score)));
                continue;
            }
            if (step.isDone() && !hits.isFull()) {
                nearby(plan, ask, during(ask, step), DURING_A_STEP, partWith(step))
                        .forEach(hit -> hits.add(hit.scoring(score)));
            }
            hit(step, plan, ask)
                    .filter(hit -> !plan.isEmpty() || !step.isListed())
                    .ifPresent(written::add);
        }
        said.stream()
                .filter(hit -> isAnnounced(hit, steps))
                .forEach(hit -> hits.add(hit.scoring(Math.min(hit.score(), hits.leastScore()))));
        if (hits.isFull()) {
            return true;
        }
        List<Hit> sounding = said(plan, BySound.UNSAID, steps, ask, hits);
        sounding.forEach(hits::add);
        return !said.isEmpty() || !sounding.isEmpty();
    }

    private static Optional<Hit> hit(Step step, List<Wanted> plan, Ask ask) {
        return new Spotter(plan, ask.within())
                .hit(step.found().episode(), step.window(), step.found().score());
    }

    /** By sound only where nothing is written so: who writes spells better than who listens. */
    private List<Step> steps(List<Wanted> plan, Ask ask, int most) throws IOException {
        List<Scope.Found> all = plan.isEmpty() ? listed(ask, most) : written(plan, ask, most);
        List<Step> steps = new ArrayList<>();
        for (Scope.Found found : all) {
            steps.add(new Step(found, window(found)));
        }
        return steps;
    }

    private List<Scope.Found> written(List<Wanted> plan, Ask ask, int most) throws IOException {
        Query plain = new Queries(words, Terms.WRITTEN, BySound.NONE).of(plan, within(ask));
        List<Scope.Found> found = ByKind.best(plain, written(ask), most, scope, searcher);
        if (!found.isEmpty()) {
            return found;
        }
        Query sounding = new Queries(words, Terms.WRITTEN, BySound.ALL).of(plan, within(ask));
        return sounding.equals(plain) ? found : ByKind.best(sounding, written(ask), most, scope, searcher);
    }

    /** Asked for without a word: none is better than another. */
    private List<Scope.Found> listed(Ask ask, int most) throws IOException {
        List<Scope.Found> all = new ArrayList<>();
        for (Passage.Kind kind : written(ask)) {
            List<Query> within = within(ask);
            within.add(new TermQuery(WindowDocument.term(kind)));
            Query any = new Queries(words, Terms.WRITTEN, BySound.NONE).of(List.of(), within);
            all.addAll(scope.some(searcher, any, most));
        }
        return all;
    }

    /** The list of ingredients is looked at for what they are and carry; its words stand in the steps. */
    private static List<Passage.Kind> written(Ask ask) {
        return ask.within().topics().isEmpty()
                ? List.of(Passage.Kind.SHOWN, Passage.Kind.STEP, Passage.Kind.SHOT)
                : List.of(Passage.Kind.INGREDIENT, Passage.Kind.STEP);
    }

    /** What has all of it in one passage, best first. */
    private List<Hit> said(List<Wanted> plan, BySound bySound, List<Step> steps, Ask ask, Folding hits)
            throws IOException {
        Spotter spotter = new Spotter(plan, ask.within());
        double most = hits.leastScore();
        List<Hit> said = new ArrayList<>();
        Query query = new Queries(words, Terms.SAID, bySound).of(plan, within(ask));
        if (!asked.add(query)) {
            return said; // where no word has sound-alikes, nothing new is found by them
        }
        for (Scope.Found found : best(plan, query, lookedAt(hits))) {
            spotter.hit(found.episode(), window(found), found.score()).ifPresent(hit -> {
                said.add(hit.scoring(Math.min(most, likelihood(hit, steps) * hit.score())));
            });
        }
        said.sort(Comparator.comparingDouble(Hit::score).reversed());
        return said;
    }

    /** What is said before the first step and after the last is of what will be or was done in one. */
    private static boolean isAnnounced(Hit hit, List<Step> steps) {
        return hit.step() == 0
                && steps.stream().anyMatch(step -> step.found().episode().equals(hit.episode()));
    }

    private static double likelihood(Hit hit, List<Step> steps) {
        boolean inItsStep = steps.stream().anyMatch(step -> step.isOn(hit));
        return inItsStep ? IN_ITS_STEP : hit.step() == 0 ? OUTSIDE_ALL : 1;
    }

    private List<Hit> nearby(List<Wanted> plan, Ask ask, List<Query> within, int most, IndexSearcher where)
            throws IOException {
        Spotter spotter = new Spotter(plan, ask.within());
        List<Hit> hits = new ArrayList<>();
        for (Nearby.Said said : new Nearby(where, words, scope).best(plan, within)) {
            if (hits.size() < most) {
                spotter.hit(said.found().episode(), said.window(), said.found().score())
                        .ifPresent(hits::add);
            }
        }
        return hits;
    }

    private List<Scope.Found> best(List<Wanted> plan, Query query, int most) throws IOException {
        return plan.isEmpty() ? scope.some(searcher, query, most) : scope.best(searcher, query, most);
    }

    private static int lookedAt(Folding hits) {
        return (int) Math.min(LOOKED_AT_MOST, (long) hits.limit() * LOOKED_AT_PER_HIT);
    }

    private static List<Query> within(Ask ask) {
        return WindowDocument.filters(ask.within());
    }

    private List<Query> during(Ask ask, Step step) {
        List<Query> within = within(ask);
        scope.of(step.found().episode()).forEach(term -> within.add(new TermQuery(term)));
        within.add(WindowDocument.step(step.window().passage().step()));
        return within;
    }

    /** All of an episode is written at once, and so in one part of the index. */
    private IndexSearcher partWith(Step step) {
        List<LeafReaderContext> parts = searcher.getLeafContexts();
        int part = ReaderUtil.subIndex(step.found().document(), parts);
        IndexSearcher only = new IndexSearcher(parts.get(part).reader());
        only.setQueryCache(null);
        return only;
    }

    private Window window(Scope.Found found) throws IOException {
        return WindowDocument.window(searcher, found.document());
    }

    /** What is written comes after what was said. */
    private FindResult result(String query, Ask ask, Folding hits, List<Hit> written, Optional<String> suggestion) {
        double least = hits.leastScore();
        written.forEach(step -> hits.add(step.scoring(Math.min(step.score(), least))));
        Optional<String> caution = ask.within().isAboutAllergens() ? Optional.of(NO_PROOF) : Optional.empty();
        return new FindResult(query, hits.hits(), suggestion, scope instanceof Scope.Archive, caution);
    }
}
