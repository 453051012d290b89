package org.misecue.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.claims.Denials.Term;
import org.misecue.claims.Phrase.Form;
import org.misecue.spoken.WordStream;

/** Finds the phrases that may be claims: a word that denies with a word for what is denied, in either order. */
final class ClaimGrammar {

    private static final Set<String> FREE_FOR_ELSE =
            Denials.set("range standing flowing running advice delivery the to up your time rein hand");
    private static final Set<String> BEFORE_NOUN = Denials.set("added actual real any using adding use cow's");
    private static final Set<String> HAVING = Denials.set("have has got contain contains use using need be");
    private static final Set<String> NEGATED =
            Denials.set("isn't aren't not hasn't haven't doesn't don't never didn't");
    private static final Set<String> SHREDS = Denials.set("single drop trace scrap speck bit crumb ounce hint");
    private static final Set<String> BEGAN_BEFORE =
            Denials.set("is are they're completely totally fully entirely all naturally also it's");
    private static final Set<String> BEGAN_AFTER = Denials.set("friendly and so too as");

    private final WordStream words;
    private final Eaters eaters;

    ClaimGrammar(WordStream words) {
        this.words = words;
        this.eaters = new Eaters(words);
    }

    /** In the order of the stream; those that deny several things at once have the same place. */
    List<Phrase> all() {
        List<Phrase> all = new ArrayList<>();
        int done = 0;
        for (int at = 0; at < words.size(); at++) {
            List<Phrase> here = at(at);
            int from = done;
            List<Phrase> fresh =
                    here.stream().filter(phrase -> phrase.start() >= from).toList();
            all.addAll(fresh);
            done = fresh.stream().mapToInt(Phrase::end).max().orElse(done);
        }
        return List.copyOf(all);
    }

    private List<Phrase> at(int at) {
        List<Phrase> found = eaters.at(at);
        if (found.isEmpty()) {
            found = quality(at);
        }
        return found.isEmpty() ? denied(at) : found;
    }

    private List<Phrase> quality(int at) {
        List<Phrase> free = free(at);
        if (!free.isEmpty()) {
            return free;
        }
        if (words.text(at).equals("non")) {
            return Denials.noun(words, at + 1)
                    .map(term -> List.of(phrase(at, term.end(), term, Form.QUALITY)))
                    .orElse(List.of());
        }
        if (words.text(at).equals("kosher") && words.text(at + 1).equals("salt")) {
            return List.of(); // the coarse sort
        }
        return Denials.alone(words, at).or(() -> joined(at)).or(() -> began(at)).stream()
                .map(term -> phrase(at, term.end(), term, Form.QUALITY))
                .toList();
    }

    /** "dairy and egg free", "free from dairy". */
    private List<Phrase> free(int at) {
        boolean follows = words.text(at).equals("free")
                && (words.text(at + 1).equals("from") || words.text(at + 1).equals("of"));
        if (follows) {
            int first = at + 2 + (BEFORE_NOUN.contains(words.text(at + 2)) ? 1 : 0);
            return together(at, NounList.from(words, first), 0, Form.QUALITY);
        }
        List<Term> nouns = NounList.from(words, at);
        if (nouns.isEmpty()) {
            return List.of();
        }
        int end = nouns.get(nouns.size() - 1).end();
        boolean free = words.text(end).equals("free")
                && !words.wall(end)
                && (words.wall(end + 1) || !FREE_FOR_ELSE.contains(words.text(end + 1)));
        return free ? together(at, nouns, end + 1, Form.QUALITY) : List.of();
    }

    /** "dairyfree", "nondairy". */
    private Optional<Term> joined(int at) {
        String word = words.text(at);
        String noun = word.endsWith("free") && word.length() > 6
                ? word.substring(0, word.length() - 4)
                : word.startsWith("non") ? word.substring(3) : "";
        return Denials.all().stream()
                .filter(row -> !noun.isEmpty()
                        && (row.nouns().contains(List.of(noun)) || row.heard().contains(List.of(noun))))
                .map(row -> new Term(at, at + 1, row, !row.nouns().contains(List.of(noun))))
                .findFirst();
    }

    /** "it's completely began friendly": recognisers write the verb where no verb can stand. */
    private Optional<Term> began(int at) {
        boolean clear = words.text(at).equals("began")
                && BEGAN_BEFORE.contains(words.text(at - 1))
                && (words.wall(at + 1) || BEGAN_AFTER.contains(words.text(at + 1)));
        return clear
                ? Denials.all().stream()
                        .filter(row -> row.key().equals("vegan"))
                        .findFirst()
                        .map(row -> new Term(at, at + 1, row, true))
                : Optional.empty();
    }

    private List<Phrase> denied(int at) {
        String word = words.text(at);
        if (word.matches("no|zero|neither")) {
            boolean contains = words.text(at - 1).startsWith("contain");
            return together(at, NounList.from(words, behind(at + 1)), 0, contains ? Form.CONTAINS_NO : Form.NO);
        }
        if (word.equals("without")) {
            return together(at, NounList.from(words, behind(at + 1)), 0, Form.WITHOUT);
        }
        return NEGATED.contains(word) ? notAny(at) : List.of();
    }

    private int behind(int from) {
        int at = from;
        while (at < from + 2
                && BEFORE_NOUN.contains(words.text(at))
                && Denials.noun(words, at).isEmpty()) {
            at++;
        }
        return at;
    }

    /** "hasn't got any eggs", "doesn't contain milk", "not a drop of milk". */
    private List<Phrase> notAny(int start) {
        int at = start + 1;
        boolean contain = false;
        while (at < start + 3 && HAVING.contains(words.text(at))) {
            contain |= words.text(at).startsWith("contain");
            at++;
        }
        boolean any = words.text(at).equals("any");
        if (words.text(at).equals("a") && SHREDS.contains(words.text(at + 1))) {
            any = true;
            at += words.text(at + 2).equals("of") ? 2 : 1;
        }
        Form form = contain ? Form.CONTAINS_NO : Form.NOT_ANY;
        return any || contain ? together(start, NounList.from(words, any ? at + 1 : at), 0, form) : List.of();
    }

    private static List<Phrase> together(int start, List<Term> nouns, int end, Form form) {
        int last = nouns.stream().mapToInt(Term::end).max().orElse(0);
        return nouns.stream()
                .map(term -> phrase(start, Math.max(last, end), term, form))
                .toList();
    }

    private static Phrase phrase(int start, int end, Term term, Form form) {
        return new Phrase(start, end, term.denial(), form, term.doubtful());
    }
}
