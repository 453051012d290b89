package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.MultiPhraseQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** What is wanted, in Lucene's terms. */
final class Queries {

    /** What another form of the word is worth, beside the very word. */
    private static final float BY_STEM = 0.9f;

    /** What an amount that was said is worth beside its words, which stand in a step as well. */
    private static final float BY_VALUE = 3f;

    /** What it is worth beside a name that the amount was heard to be of that: the name alone is said in other places. */
    private static final float BY_WHAT_IT_IS_OF = 2f;

    /** What it adds that all that is wanted was said together. */
    private static final float TOGETHER = 0.5f;

    private static final int TOGETHER_WITHIN = 3;

    /** Two words count where one was meant, so that they weigh about as much. */
    private static final float WRITTEN_APART = 0.6f;

    private final IndexReader reader;

    private final BySound bySound;

    /**
     * @param reader tells which words there are
     * @param bySound what may be found by its sound, too
     */
    Queries(IndexReader reader, BySound bySound) {
        this.reader = reader;
        this.bySound = bySound;
    }

    /**
     * @param within what the passages must be, too
     */
    Query of(List<Wanted> plan, List<Query> within) throws IOException {
        BooleanQuery.Builder query = new BooleanQuery.Builder();
        List<String> amounts = amounts(plan);
        for (Wanted wanted : plan) {
            query.add(of(wanted, amounts), Occur.MUST);
        }
        if (plan.size() > 1) {
            query.add(new BoostQuery(together(plan), TOGETHER), Occur.SHOULD);
        }
        within.forEach(filter -> query.add(filter, Occur.FILTER));
        return query.build();
    }

    /** A query for each thing that is wanted. */
    List<Query> each(List<Wanted> plan, List<Query> within) throws IOException {
        List<Query> each = new ArrayList<>();
        List<String> amounts = amounts(plan);
        for (Wanted wanted : plan) {
            BooleanQuery.Builder query = new BooleanQuery.Builder();
            query.add(of(wanted, amounts), Occur.MUST);
            within.forEach(filter -> query.add(filter, Occur.FILTER));
            each.add(query.build());
        }
        return each;
    }

    private static List<String> amounts(List<Wanted> plan) {
        return plan.stream().flatMap(wanted -> wanted.amount().stream()).toList();
    }

    /** @param amounts that are wanted too: they may have been said of it, wherever its name was */
    private Query of(Wanted wanted, List<String> amounts) throws IOException {
        List<Query> alternatives = new ArrayList<>();
        for (Wanted.Wording wording : wanted.wordings()) {
            if (wanted.amount().isEmpty()) {
                amounts.forEach(amount -> alternatives.add(
                        new BoostQuery(amountOf(wording.tokens(), amount), wording.worth() * BY_WHAT_IT_IS_OF)));
            }
            if (wording.exactly()) {
                add(wording.tokens().get(0).word(), wording.worth(), alternatives);
            } else if (wording.tokens().size() == 1) {
                addWord(wording.tokens().get(0), wording.worth(), alternatives);
            } else {
                addPhrase(wording, alternatives);
            }
        }
        wanted.amount()
                .ifPresent(key -> alternatives.add(
                        new BoostQuery(new TermQuery(new Term(WindowDocument.AMOUNT, key)), BY_VALUE)));
        return new DisjunctionMaxQuery(alternatives, 0);
    }

    private static Query amountOf(List<Token> name, String amount) {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        name.forEach(word ->
                all.add(new TermQuery(new Term(WindowDocument.OF, WindowDocument.of(word, amount))), Occur.MUST));
        return all.build();
    }

    private void addWord(Token token, float worth, List<Query> alternatives) throws IOException {
        add(token.word(), worth, alternatives);
        add(Terms.stem(token), worth * BY_STEM, alternatives);
        addWrittenApart(token.word(), worth, alternatives);
        if (isBySound(token)) {
            add(Terms.sound(token), worth * Wanted.BY_SOUND, alternatives);
        }
    }

    private boolean isBySound(Token token) throws IOException {
        return !token.sound().isEmpty()
                && switch (bySound) {
                    case NONE -> false;
                    case UNSAID -> reader.docFreq(term(Terms.stem(token))) == 0;
                    case ALL -> true;
                };
    }

    /** "tea spoon" where "teaspoon" is looked for. */
    private void addWrittenApart(String word, float worth, List<Query> alternatives) throws IOException {
        for (int first = 1; first < word.length(); first++) {
            Term one = term(word.substring(0, first));
            Term other = term(word.substring(first));
            if (reader.docFreq(one) > 0 && reader.docFreq(other) > 0) {
                PhraseQuery apart = new PhraseQuery(Terms.FIELD, one.text(), other.text());
                alternatives.add(new BoostQuery(apart, worth * WRITTEN_APART));
            }
        }
    }

    private static void add(String term, float worth, List<Query> alternatives) {
        alternatives.add(new BoostQuery(new TermQuery(term(term)), worth));
    }

    private void addPhrase(Wanted.Wording wording, List<Query> alternatives) throws IOException {
        MultiPhraseQuery.Builder said = new MultiPhraseQuery.Builder();
        MultiPhraseQuery.Builder heard = new MultiPhraseQuery.Builder();
        boolean sounds = false;
        for (Token token : wording.tokens()) {
            Term stem = term(Terms.stem(token));
            said.add(stem);
            boolean sounding = isBySound(token);
            sounds |= sounding;
            heard.add(sounding ? new Term[] {stem, term(Terms.sound(token))} : new Term[] {stem});
        }
        alternatives.add(new BoostQuery(said.build(), wording.worth()));
        if (sounds) {
            alternatives.add(new BoostQuery(heard.build(), wording.worth() * Wanted.BY_SOUND));
        }
    }

    private static Query together(List<Wanted> plan) {
        PhraseQuery.Builder phrase = new PhraseQuery.Builder();
        for (Wanted wanted : plan) {
            wanted.wordings().get(0).tokens().forEach(token -> phrase.add(term(Terms.stem(token))));
        }
        return phrase.setSlop(TOGETHER_WITHIN).build();
    }

    private static Term term(String text) {
        return new Term(Terms.FIELD, text);
    }
}
