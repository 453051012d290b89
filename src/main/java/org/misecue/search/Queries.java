package org.misecue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.FieldExistsQuery;
import org.apache.lucene.search.MultiPhraseQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SynonymQuery;
import org.apache.lucene.search.TermQuery;

/** What is wanted, in Lucene's terms. */
final class Queries {

    /** As how much of a time it counts that another form of the word was said. */
    private static final float BY_STEM = 0.7f;

    /** What an amount that was said is worth beside its words, which stand in a step as well. */
    private static final float BY_VALUE = 3f;

    /** What it is worth beside a name that the amount was heard to be of that: the name alone is said in other places. */
    private static final float BY_WHAT_IT_IS_OF = 2f;

    /** What it adds that all that is wanted was said together. */
    private static final float TOGETHER = 0.5f;

    private static final int TOGETHER_WITHIN = 3;

    /** Two words count where one was meant, so that they weigh about as much. */
    private static final float WRITTEN_APART = 0.6f;

    private final Vocabulary words;
    private final String field;
    private final BySound bySound;

    /**
     * @param words tells which words there are
     * @param field where they are looked for
     * @param bySound what may be found by its sound, too
     */
    Queries(Vocabulary words, String field, BySound bySound) {
        this.words = words;
        this.field = field;
        this.bySound = bySound;
    }

    /**
     * @param within what the passages must be, too
     */
    Query of(List<Wanted> plan, List<Query> within) {
        BooleanQuery.Builder query = new BooleanQuery.Builder();
        List<String> amounts = amounts(plan);
        for (Wanted wanted : plan) {
            query.add(of(wanted, amounts), Occur.MUST);
        }
        if (plan.isEmpty()) {
            query.add(new FieldExistsQuery(field), Occur.FILTER);
        }
        if (plan.size() > 1) {
            together(plan).ifPresent(together -> query.add(new BoostQuery(together, TOGETHER), Occur.SHOULD));
        }
        within.forEach(filter -> query.add(filter, Occur.FILTER));
        return query.build();
    }

    /** A query for each thing that is wanted. */
    List<Query> each(List<Wanted> plan, List<Query> within) {
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
    private Query of(Wanted wanted, List<String> amounts) {
        List<Query> alternatives = new ArrayList<>();
        for (Wanted.Wording wording : wanted.telling()) {
            if (wanted.amount().isEmpty()) {
                amounts.forEach(amount -> alternatives.add(
                        new BoostQuery(amountOf(wording.tokens(), amount), wording.worth() * BY_WHAT_IT_IS_OF)));
            }
            if (isJust(wording)) {
                phrase(wording.tokens(), this::itself, 0)
                        .ifPresent(just -> alternatives.add(new BoostQuery(just, wording.worth())));
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

    private boolean isJust(Wanted.Wording wording) {
        return switch (wording.forms()) {
            case ALIKE -> false;
            case AFTER_ITSELF -> bySound == BySound.NONE;
            case NEVER -> true;
        };
    }

    private List<String> itself(Token token) {
        return words.has(token.word()) ? List.of(token.word()) : List.of();
    }

    private static Query amountOf(List<Token> name, String amount) {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        name.forEach(word ->
                all.add(new TermQuery(new Term(WindowDocument.OF, WindowDocument.of(word, amount))), Occur.MUST));
        return all.build();
    }

    private void addWord(Token token, float worth, List<Query> alternatives) {
        List<String> forms = words.formsOf(token);
        addAny(token.word(), forms, BY_STEM, worth, alternatives);
        addWrittenApart(token.word(), worth, alternatives);
        if (isBySound(token)) {
            List<String> others = new ArrayList<>(words.soundingLike(token));
            others.removeAll(forms);
            addAny(token.word(), others, 1, worth * Wanted.BY_SOUND, alternatives);
        }
    }

    private boolean isBySound(Token token) {
        return !token.sound().isEmpty()
                && switch (bySound) {
                    case NONE -> false;
                    case UNSAID -> words.formsOf(token).isEmpty();
                    case ALL -> true;
                };
    }

    /** "tea spoon" where "teaspoon" is looked for. */
    private void addWrittenApart(String word, float worth, List<Query> alternatives) {
        for (int first = 1; first < word.length(); first++) {
            String one = word.substring(0, first);
            String other = word.substring(first);
            if (words.has(one) && words.has(other)) {
                alternatives.add(new BoostQuery(new PhraseQuery(field, one, other), worth * WRITTEN_APART));
            }
        }
    }

    /**
     * As if all were one word.
     *
     * @param share as how much of the word itself each of the others counts, at most 1
     */
    private void addAny(String word, List<String> alike, float share, float worth, List<Query> alternatives) {
        SynonymQuery.Builder any = new SynonymQuery.Builder(field);
        alike.forEach(other -> any.addTerm(term(other), other.equals(word) ? 1 : share));
        if (!alike.isEmpty()) {
            alternatives.add(new BoostQuery(any.build(), worth));
        }
    }

    private void addPhrase(Wanted.Wording wording, List<Query> alternatives) {
        Optional<Query> said = phrase(wording.tokens(), words::formsOf, 0);
        said.ifPresent(query -> alternatives.add(new BoostQuery(query, wording.worth())));
        if (wording.tokens().stream().anyMatch(this::isBySound)) {
            phrase(wording.tokens(), token -> isBySound(token) ? heard(token) : words.formsOf(token), 0)
                    .filter(heard -> !said.equals(Optional.of(heard)))
                    .ifPresent(heard -> alternatives.add(new BoostQuery(heard, wording.worth() * Wanted.BY_SOUND)));
        }
    }

    private List<String> heard(Token token) {
        return Stream.concat(words.formsOf(token).stream(), words.soundingLike(token).stream())
                .distinct()
                .toList();
    }

    private Optional<Query> together(List<Wanted> plan) {
        List<Token> all = plan.stream()
                .flatMap(wanted -> wanted.wordings().get(0).tokens().stream())
                .toList();
        return phrase(all, words::formsOf, TOGETHER_WITHIN);
    }

    /** Nothing where a word of it is in no passage. */
    private Optional<Query> phrase(List<Token> tokens, Function<Token, List<String>> alike, int within) {
        MultiPhraseQuery.Builder phrase = new MultiPhraseQuery.Builder().setSlop(within);
        PhraseQuery.Builder plain = new PhraseQuery.Builder().setSlop(within); // the faster one, where it will do
        boolean isPlain = true;
        for (Token token : tokens) {
            List<String> any = alike.apply(token);
            if (any.isEmpty()) {
                return Optional.empty();
            }
            phrase.add(any.stream().map(this::term).toArray(Term[]::new));
            plain.add(term(any.get(0)));
            isPlain &= any.size() == 1;
        }
        return Optional.of(isPlain ? plain.build() : phrase.build());
    }

    private Term term(String word) {
        return new Term(field, word);
    }
}
