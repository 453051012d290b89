package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.search.IndexSearcher;
import org.misecue.search.Wanted.OtherForms;
import org.misecue.search.Wanted.Wording;

/** Decides in which wordings each part of a query is looked for. */
final class Plan {

    private Plan() {}

    /** As asked, and by other names; words that name one thing together are kept together. */
    static List<Wanted> strict(Ask ask, IndexSearcher searcher, Vocabulary words) throws IOException {
        List<Wanted> plan = new ArrayList<>();
        int next = 0;
        while (next < ask.parts().size()) {
            if (ask.parts().get(next).amount().isPresent()) {
                plan.add(amount(ask.parts().get(next++)));
                continue;
            }
            next += addLongestName(ask.parts(), next, searcher, words, plan);
        }
        return plan;
    }

    /**
     * As {@link #strict}, but the last word is the beginning of others.
     *
     * @param longer those words
     */
    static List<Wanted> begun(Ask ask, List<String> longer, IndexSearcher searcher, Vocabulary words)
            throws IOException {
        List<Wanted> plan = new ArrayList<>(strict(ask.withoutLast(), searcher, words));
        plan.add(new Wanted(completed(longer)));
        return plan;
    }

    /**
     * Each word by itself or by another name for it, and words that nobody said by those of nearest spelling.
     *
     * @param longer words that the last may be the beginning of
     */
    static List<Wanted> loose(Ask ask, List<String> longer, Spelling spelling, IndexSearcher searcher, Vocabulary words)
            throws IOException {
        List<Wanted> plan = new ArrayList<>();
        for (Wanted wanted : strict(ask, searcher, words)) {
            if (wanted.amount().isPresent()) {
                plan.add(wanted);
                continue;
            }
            List<Wording> others =
                    wanted.wordings().subList(1, wanted.wordings().size());
            for (Token token : wanted.wordings().get(0).tokens()) {
                List<Wording> wordings = new ArrayList<>();
                wordings.add(new Wording(List.of(token), Wanted.AS_ASKED));
                for (String near : spelling.near(token)) {
                    wordings.add(new Wording(Token.of(near), Wanted.BY_NEAR_SPELLING));
                }
                if (wanted.doing()) {
                    wordings.add(new Wording(List.of(token.doer()), Wanted.BY_NEAR_SPELLING));
                }
                wordings.addAll(others);
                plan.add(new Wanted(wordings, Optional.empty(), wanted.doing()));
            }
        }
        if (!longer.isEmpty()) {
            plan.add(new Wanted(completed(longer)));
        }
        return plan;
    }

    private static List<Wording> completed(List<String> longer) {
        return longer.stream()
                .map(word -> new Wording(Token.of(word), Wanted.BY_BEGINNING, OtherForms.NEVER))
                .toList();
    }

    /** @return how many parts were used */
    private static int addLongestName(
            List<Ask.Part> parts, int from, IndexSearcher searcher, Vocabulary vocabulary, List<Wanted> plan)
            throws IOException {
        for (int words = Math.min(OtherNames.MOST_WORDS, plainParts(parts, from)); words > 0; words--) {
            List<Token> name = new ArrayList<>();
            parts.subList(from, from + words).forEach(part -> name.addAll(part.tokens()));
            List<List<Token>> others = new ArrayList<>(OtherNames.of(name, searcher));
            if (words == 2) {
                addWrittenAsOne(name, vocabulary, others);
            }
            if (words == 1 || !others.isEmpty()) {
                plan.add(wanted(name, others, words == 1 && parts.get(from).doing()));
                return words;
            }
        }
        plan.add(quoted(parts.get(from).tokens()));
        return 1;
    }

    /** "tea spoon" where somebody wrote "teaspoon". */
    private static void addWrittenAsOne(List<Token> name, Vocabulary words, List<List<Token>> others) {
        String word = name.get(0).word() + name.get(1).word();
        if (words.has(word)) {
            others.add(Token.of(word));
        }
    }

    private static int plainParts(List<Ask.Part> parts, int from) {
        int end = from;
        while (end < parts.size() && isPlain(parts.get(end))) {
            end++;
        }
        return end - from;
    }

    private static boolean isPlain(Ask.Part part) {
        return !part.quoted() && part.amount().isEmpty();
    }

    private static Wanted amount(Ask.Part part) {
        return new Wanted(List.of(new Wording(part.tokens(), Wanted.AS_ASKED)), part.amount(), false);
    }

    private static Wanted quoted(List<Token> asked) {
        return new Wanted(List.of(new Wording(asked, Wanted.AS_ASKED, OtherForms.AFTER_ITSELF)));
    }

    private static Wanted wanted(List<Token> asked, List<List<Token>> others, boolean doing) {
        List<Wording> wordings = new ArrayList<>();
        wordings.add(new Wording(asked, Wanted.AS_ASKED));
        others.forEach(other -> wordings.add(new Wording(other, Wanted.BY_OTHER_NAME)));
        return new Wanted(wordings, Optional.empty(), doing);
    }
}
