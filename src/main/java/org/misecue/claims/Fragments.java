package org.misecue.claims;

import java.util.Optional;
import java.util.Set;
import org.misecue.claims.Subjects.Meaning;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Claims without a verb that tells: "today a vegan lemon loaf", "dairy free and delicious". */
final class Fragments {

    static final Set<String> MODAL =
            Words.set("would could can might may won't can't couldn't wouldn't mightn't i'd it'd they'd to");
    private static final Set<String> MAKING = Words.set(
            "make making made keep want wants wanted need needs needed like prefer do doing did tried try have had get "
                    + "bake baked buy call called wish eat take turn turned leave having");
    static final Set<String> IFFY = Words.set("if unless whether wish until till when once hope suppose");
    private static final Set<String> WANTING = Words.set(
            "if whether for want wants wanted need needs prefer could can would might tried try next last another other "
                    + "once make making wish how any some called asked ask request requests usually");
    private static final Set<String> PAST = Words.set("did made had baked brought bought took tried sold ate");
    private static final Set<String> BAKERS = Set.of("i", "we", "she", "he", "they", "mum", "who");
    private static final Set<String> ALMOST = Set.of("almost", "nearly", "practically");

    private final WordStream words;
    private final Afterwords afterwords;
    private final OthersTalk others;

    Fragments(WordStream words, Afterwords afterwords, OthersTalk others) {
        this.words = words;
        this.afterwords = afterwords;
        this.others = others;
    }

    /** "is it vegan": a claim where the answer is yes. "make it dairy free", "i tried it gluten free": none. */
    Optional<Subject> object(int object, int end) {
        int at = object - 1;
        if (words.text(at).matches("is|are|isn't|aren't")) {
            return afterwords.affirm(end) ? Optional.of(Subject.DISH) : Optional.empty();
        }
        boolean making = MAKING.contains(words.text(at)) || words.wall(object) || MODAL.contains(words.text(at));
        boolean makes = words.text(at).matches("makes|keeps");
        return makes || !(making || IFFY.contains(words.text(at)))
                ? of(end, object, end, Optional.empty())
                : Optional.empty();
    }

    /** No verb that tells: "today a vegan lemon loaf", "dairy free and delicious". */
    Optional<Subject> of(int start, int before, int end, Optional<Meaning> noun) {
        if (others.leadsTo(start) || afterwords.pointElsewhere(end)) {
            return Optional.empty();
        }
        for (int at = others.windowStart(before + 1); at <= before; at++) {
            if (isWanting(at, before, noun) || isPast(at)) {
                return Optional.empty();
            }
        }
        if (Persons.isOne(words.text(before)) || (words.text(before).equals("my") && noun.isEmpty())) {
            return Optional.empty();
        }
        return noun.map(Meaning::subject).orElse(Optional.of(Subject.DISH));
    }

    /** "if you want a …", "not a …", "for a …": nothing that is there. */
    private boolean isWanting(int at, int before, Optional<Meaning> noun) {
        String word = words.text(at);
        boolean forIt = word.equals("for") && noun.isEmpty() && at < before;
        return (WANTING.contains(word) && !isDoing(at) && !forIt) || Negations.isOne(word) || ALMOST.contains(word);
    }

    /** "we made a …". */
    private boolean isPast(int at) {
        return PAST.contains(words.text(at)) && BAKERS.contains(words.text(at - 1));
    }

    /** "we're making a…". */
    private boolean isDoing(int at) {
        return words.text(at).equals("making") && words.text(at - 1).matches("i'm|we're|am|are");
    }
}
