package org.misecue.claims;

import java.util.Optional;
import java.util.Set;
import org.misecue.claims.Subjects.Meaning;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Claims that a verb makes: "this is dairy free", "the margarine i'm using is vegan". */
final class Predicates {

    private static final Set<String> SAYING =
            Words.set("say saying said call mean means claim promise guarantee swear");
    private static final Set<String> OTHER = Words.set("week month year time lasts");

    private final WordStream words;
    private final Subjects subjects;
    private final Afterwords afterwords;
    private final OthersTalk others;
    private final Fragments fragments;

    Predicates(WordStream words, Subjects subjects, Afterwords afterwords, OthersTalk others, Fragments fragments) {
        this.words = words;
        this.subjects = subjects;
        this.afterwords = afterwords;
        this.others = others;
        this.fragments = fragments;
    }

    /** "…is dairy free", with the verb at the index. */
    Optional<Subject> of(int verb, int end, Optional<Meaning> noun) {
        String is = words.text(verb);
        if (is.matches("was|were|been|being")) {
            return Optional.empty();
        }
        if (is.equals("be") && !isTurningOut(verb) && isOnlyWished(verb - 1)) {
            return Optional.empty();
        }
        int at = lastOfSubject(verb);
        Optional<Subject> attributed = noun.flatMap(Meaning::subject).map(this::thatIsMade);
        if ((words.wall(at + 1) && at < verb - 1) || at < 0) {
            return afterwords.affirm(end) ? attributed.or(() -> Optional.of(Subject.DISH)) : Optional.empty();
        }
        if (Persons.isOne(words.text(at)) || OTHER.contains(words.text(at))) {
            return Optional.empty();
        }
        if (words.text(at).matches("that|which") && words.text(at - 1).matches("one|ones|something|anything")) {
            return fragments.of(at - 1, at - 1, end, noun);
        }
        Optional<Meaning> named = namedBefore(at + 1);
        int subjectStart = startOfSubject(at, named);
        if (governedByIf(subjectStart) || others.isIn(subjectStart, at)) {
            return Optional.empty();
        }
        if (attributed.isPresent() && attributed.get().kind() != Subject.Kind.DISH) {
            return attributed;
        }
        // "there is a vegan one", but "what you've got there is vegan".
        if (words.text(at).equals("there") && !words.text(at - 1).matches("got|have|made|see")) {
            return Optional.empty();
        }
        return named.map(Meaning::subject).orElseGet(() -> behind(end).or(() -> Optional.of(Subject.DISH)));
    }

    /** "it happens to be", "turns out to be". */
    private boolean isTurningOut(int verb) {
        return words.text(verb - 1).equals("to") && words.text(verb - 2).matches("happens|happen|out|turns");
    }

    /** "it can be", "it won't be". */
    private boolean isOnlyWished(int at) {
        return Fragments.MODAL.contains(words.text(at)) || Negations.isOne(words.text(at));
    }

    /** The last word of what the verb tells of. */
    private int lastOfSubject(int verb) {
        String is = words.text(verb);
        if (is.equals("they're") || is.equals("it's") || is.equals("that's")) {
            return verb;
        }
        int at = verb - 1;
        if (is.equals("be") && isTurningOut(verb)) {
            at -= words.text(at - 1).equals("out") ? 3 : 2;
            while ((at >= 0 && Degrees.isOne(words.text(at))) || words.text(at).equals("so")) {
                at--;
            }
        } else if (is.equals("be")) {
            at--;
        }
        while (at >= 0 && words.text(at).matches("also|all|both|now|actually|itself|themselves")) {
            at--;
        }
        return at;
    }

    /** "this is a vegan marshmallow": what the recipe has no line for is what it makes. */
    private Subject thatIsMade(Subject named) {
        boolean unlisted = named.kind() == Subject.Kind.INGREDIENT
                && subjects.linesOf(named.name()).isEmpty();
        return unlisted ? Subject.DISH : named;
    }

    /** "the margarine i'm using", "margarine which", "this margarine it". */
    private Optional<Meaning> namedBefore(int end) {
        int at = end;
        if (words.text(at - 1).matches("it|which|that|they|this|these|they're|it's|that's")) {
            at--;
            at -= words.text(at - 1).matches("and|because|cos|as") ? 1 : 0;
            return words.wall(at) ? Optional.empty() : subjects.before(at).filter(this::isPointedAt);
        }
        if (words.text(at - 1).matches("using|got|have|use|here|bought|today")) {
            at--;
            at -= words.text(at - 1).matches("i'm|i've|i|we|we're|we've") ? 1 : 0;
            at -= words.text(at - 1).equals("that") ? 1 : 0;
        }
        return subjects.before(at);
    }

    /** Not the eggs of "no eggs it's vegan". */
    private boolean isPointedAt(Meaning meaning) {
        boolean denied = false;
        for (int at = Math.max(0, meaning.end() - 4); at < meaning.end(); at++) {
            denied |= words.text(at).matches("no|any|without|not");
        }
        return !denied
                && meaning.subject()
                        .filter(subject -> subject.kind() == Subject.Kind.INGREDIENT)
                        .isPresent();
    }

    /** "it's dairy free this margarine". */
    private Optional<Subject> behind(int end) {
        boolean pointed = words.text(end).matches("this|these") && !words.wall(end);
        return pointed ? subjects.at(end + 1).flatMap(Meaning::subject) : Optional.empty();
    }

    private int startOfSubject(int last, Optional<Meaning> named) {
        int at = last;
        int reach = named.isPresent() ? 6 : 3;
        while (at > 0
                && last - at < reach
                && !words.wall(at)
                && !words.text(at).matches("the|this|these|that|it|they|they're|it's|everything|my|our|your|which")) {
            at--;
        }
        return at;
    }

    private boolean governedByIf(int start) {
        if (words.wall(start)) {
            return false;
        }
        String one = words.text(start - 1);
        if (Fragments.IFFY.contains(one) || (one.equals("that") && Fragments.IFFY.contains(words.text(start - 2)))) {
            return true;
        }
        boolean saying = SAYING.contains(one)
                || (one.equals("you") && words.text(start - 2).equals("tell"));
        return saying
                && (Negations.endsWithin(words, start - 1)
                        || words.text(start - 2).matches("they|people|packet|label"));
    }
}
