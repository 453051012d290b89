package org.misecue.claims;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.misecue.claims.Subjects.Meaning;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Whether a phrase is a claim, by the words around it, and what it is about. */
final class Framing {

    private static final Set<String> DEGREES = Words.set(
            "completely totally entirely fully all also both naturally actually really even obviously just very quite "
                    + "still now always already too absolutely properly happily course of a an the our proper lovely "
                    + "delicious simple easy nice great beautiful little classic wonderful gorgeous hundred percent "
                    + "cent per 100 certainly definitely genuinely basically technically handily luckily "
                    + "essentially accidentally um uh er like sort kind you know well");
    private static final Set<String> IS = Words.set("is are they're it's that's am be was were being been stays stay");
    private static final Set<String> DENYING = Words.set(
            "not isn't aren't wasn't weren't never nor hardly cannot can't won't don't doesn't ain't nothing");
    private static final Set<String> ALMOST = Words.set("almost nearly practically virtually barely mostly nearly");
    private static final Set<String> MODAL =
            Words.set("would could can might may won't can't couldn't wouldn't mightn't i'd it'd they'd to");
    private static final Set<String> MAKING = Words.set(
            "make making made keep want wants wanted need needs needed like prefer do doing did tried try have had get "
                    + "bake baked buy call called wish eat take turn turned leave having");
    private static final Set<String> OBJECTS = Words.set("it this these them that yours mine everything one");
    private static final Set<String> PERSONS = Words.set(
            "i i'm i've i'd we we're we've you you're you've he he's she she's who anyone someone somebody anybody "
                    + "sister brother mum mother dad father nan gran grandma niece nephew son daughter husband wife partner "
                    + "friend friends neighbour cousin aunt aunty auntie uncle kids children people guest guests customer "
                    + "customers family flatmate colleague boss doctor half flatmates");
    private static final Set<String> IFFY = Words.set("if unless whether wish until till when once hope suppose");
    private static final Set<String> SAYING =
            Words.set("say saying said call mean means claim promise guarantee swear");
    private static final Set<String> WANTING = Words.set(
            "if whether for want wants wanted need needs prefer could can would might tried try next last another other "
                    + "once make making wish how any some called asked ask request requests usually");
    private static final Set<String> PAST = Words.set("did made had baked brought bought took tried sold ate");
    private static final Set<String> NOT_EATEN = Words.set(
            "kitchen kitchens household home house school nursery bakery cafe café shop shops aisle section shelf friend "
                    + "friends guest guests people person diet diets lifestyle baking baker bakers eater eaters crowd lot "
                    + "customer customers cookbook book channel blog month week restaurant family daughter son sister "
                    + "mates mate movement life market zone table range logo label sticker police");
    private static final Set<String> OPTIONS =
            Words.set("version versions option options alternative alternatives swap substitute substitutes");
    private static final Set<String> PRESENTING = Words.set("is here's it's that's this");
    private static final Pattern EXCEPT = Pattern.compile(
            "(?:too |as well |then |anyway )*(?:apart from|except|bar the|but for|if you|if i|if we|if it|unless|without|as long"
                    + " as|provided|providing|depending|once you|until|when you use|when you swap|if only|for the most part|ish)\\b.*");
    private static final Pattern ELSEWHERE = Pattern.compile(
            ".*\\b(?:on the channel|on my channel|in the book|in my book|linked|link below|next week|next time|last week|last"
                    + " time|last month|last year|once and|the other day|on the blog|in the shops?|in the supermarket)\\b.*");
    private static final Pattern TAKEN_BACK = Pattern.compile(
            "(?:\\w+ ){0,3}?(?:(?:well|oh|um|er|actually|hang on|wait) )*no (?:sorry|wait|hang|it|it's|they|they're|that|i|i'm|"
                    + "not|actually|tell|hold|let)\\b.*|(?:\\w+ ){0,2}?(?:sorry|actually|wait|scratch that|i tell a lie|i mean)"
                    + " (?:\\w+ )?(?:isn't|is not|it's not|it is not|aren't|they're not|not|no)\\b.*"
                    + "|(?:it|they) (?:isn't|aren't)\\b.*|or (?:not|is it)\\b.*");
    private static final Pattern YES = Pattern.compile(
            "(?:(?!no\\b|not\\b|isn't\\b|nope\\b)[\\w']+ ){0,5}?(?:yes|yep|yeah|it is|they are|of course|absolutely|course it is|certainly|sure)\\b.*");

    private static final int DEGREES_REACH = 6;
    private static final int WINDOW = 8;
    private static final int BEHIND = 9;

    private final WordStream words;
    private final Phrases phrases;
    private final Subjects subjects;
    private final DenialFraming denials;

    Framing(WordStream words, Subjects subjects, boolean terse) {
        this.words = words;
        this.phrases = new Phrases(words);
        this.subjects = subjects;
        this.denials = new DenialFraming(words, subjects, terse);
    }

    /** What the claim is about; empty where the phrase is none. The end is that of all claims that are joined to it. */
    Optional<Subject> subject(Phrase phrase, int start, int end) {
        String behind = words.normal(end, sentenceEnd(end, BEHIND));
        if (TAKEN_BACK.matcher(words.normal(end, end + BEHIND)).matches()
                || EXCEPT.matcher(behind).matches()) {
            return Optional.empty();
        }
        return switch (phrase.form()) {
            case QUALITY -> quality(start, end);
            case SUITS -> words.text(start + 2).equals("to") ? given(start) : quality(start, end);
            case MAY_EAT -> isDenied(start) ? Optional.empty() : Optional.of(Subject.DISH);
            case NO, CONTAINS_NO, NOT_ANY, WITHOUT -> isOtherStory(start) ? Optional.empty() : denials.subject(phrase);
        };
    }

    private boolean isDenied(int start) {
        return DENYING.contains(words.text(start - 1)) || DENYING.contains(words.text(start - 2));
    }

    /** "you can give this to…", but "you can't". */
    private Optional<Subject> given(int start) {
        return deniedWithin(start) || IFFY.contains(words.text(start - 2))
                ? Optional.empty()
                : Optional.of(Subject.DISH);
    }

    private Optional<Subject> quality(int start, int end) {
        if (NOT_EATEN.contains(words.text(end)) && !words.wall(end)) {
            return Optional.empty();
        }
        if (OPTIONS.contains(words.text(end)) && !isPresented(start)) {
            return Optional.empty();
        }
        Optional<Meaning> noun = subjects.at(end);
        if (noun.isPresent() && noun.get().subject().isEmpty()) {
            return Optional.empty();
        }
        int before = beforeDegrees(start);
        boolean onlyNot = words.text(before).matches("only|merely")
                && words.text(before - 1).equals("not");
        if (onlyNot) {
            before = beforeDegrees(before - 1);
        }
        String governing = words.border(before + 1) && words.wall(before + 1) ? "" : words.text(before);
        if (DENYING.contains(governing) || ALMOST.contains(governing)) {
            return Optional.empty();
        }
        if (!governing.isEmpty() && IS.contains(governing)) {
            return predicate(before, end, noun);
        }
        if (governing.matches("says|say|said|marked|labelled")) {
            return Optional.empty();
        }
        if (noun.isPresent() && isOffered(before, noun.get())) {
            return Optional.empty();
        }
        if (OBJECTS.contains(governing) && noun.isEmpty()) {
            return object(before, end);
        }
        return fragment(start, before, end, noun);
    }

    /** "or use vegan butter", "it works with gluten free flour": of what viewers may take. */
    private boolean isOffered(int before, Meaning noun) {
        boolean ingredient = noun.subject()
                .filter(subject -> subject.kind() == Subject.Kind.INGREDIENT)
                .isPresent();
        return ingredient
                && (words.text(before).matches("or|with|works|swap|try|for|like|into")
                                && !words.text(before - 1).matches("start|mine|made|starting|begin")
                        || words.text(before - 1).equals("or")
                        || EXCEPT.matcher(words.normal(noun.end(), sentenceEnd(noun.end(), BEHIND)))
                                .matches());
    }

    private boolean isPresented(int start) {
        int before = start - 1;
        while (before >= 0 && start - before < 4 && words.text(before).matches("the|our|my|a|completely|totally")) {
            before--;
        }
        return PRESENTING.contains(words.text(before))
                && !words.text(before - 1).equals("if");
    }

    private int beforeDegrees(int start) {
        int at = start - 1;
        while (at >= 0 && start - at <= DEGREES_REACH && !words.wall(at + 1) && DEGREES.contains(words.text(at))) {
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

    /** "…is dairy free", with the verb at the index. */
    private Optional<Subject> predicate(int verb, int end, Optional<Meaning> noun) {
        String is = words.text(verb);
        if (is.matches("was|were|been|being")) {
            return Optional.empty();
        }
        int at = verb - 1;
        if (is.equals("be") && words.text(at).equals("to") && words.text(at - 1).matches("happens|happen|out|turns")) {
            at -= words.text(at - 1).equals("out") ? 3 : 2;
            while (at >= 0 && DEGREES.contains(words.text(at)) || words.text(at).equals("so")) {
                at--;
            }
        } else if (is.equals("be")) {
            if (MODAL.contains(words.text(at)) || DENYING.contains(words.text(at))) {
                return Optional.empty();
            }
            at -= 1;
        }
        while (at >= 0 && words.text(at).matches("also|all|both|now|actually|itself|themselves")) {
            at--;
        }
        if (is.equals("they're") || is.equals("it's") || is.equals("that's")) {
            at = verb;
        }
        Optional<Subject> attributed = noun.flatMap(Meaning::subject).map(this::thatIsMade);
        if (words.wall(at + 1) && at < verb - 1 || at < 0) {
            return asked(end) ? attributed.or(() -> Optional.of(Subject.DISH)) : Optional.empty();
        }
        if (PERSONS.contains(words.text(at)) || isOf(OTHER, at)) {
            return Optional.empty();
        }
        if (words.text(at).matches("that|which") && words.text(at - 1).matches("one|ones|something|anything")) {
            return fragment(at - 1, at - 1, end, noun);
        }
        Optional<Meaning> named = namedBefore(at + 1);
        int subjectStart = startOfSubject(at, named);
        if (governedByIf(subjectStart) || isSomebodyElses(subjectStart, at)) {
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

    private static final Set<String> OTHER = Words.set("week month year time lasts");

    private static boolean isIn(Set<String> set, String word) {
        return set.contains(word);
    }

    private boolean isOf(Set<String> set, int at) {
        return isIn(set, words.text(at));
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
        if (IFFY.contains(one) || (one.equals("that") && IFFY.contains(words.text(start - 2)))) {
            return true;
        }
        boolean saying = SAYING.contains(one)
                || (one.equals("you") && words.text(start - 2).equals("tell"));
        return saying && (deniedWithin(start - 1) || words.text(start - 2).matches("they|people|packet|label"));
    }

    private boolean deniedWithin(int end) {
        for (int at = end; at > end - 7 && at >= 0 && !words.wall(at + 1); at--) {
            if (DENYING.contains(words.text(at))) {
                return true;
            }
        }
        return false;
    }

    private boolean isSomebodyElses(int from, int to) {
        return phrases.within(Phrases.Kind.OTHER_PEOPLE, from, to + 1)
                || phrases.within(Phrases.Kind.OTHER_TIME, from, to + 1);
    }

    /** "is it vegan": a claim where the answer is yes. "make it dairy free", "i tried it gluten free": none. */
    private Optional<Subject> object(int object, int end) {
        int at = object - 1;
        if (words.text(at).matches("is|are|isn't|aren't")) {
            return asked(end) ? Optional.of(Subject.DISH) : Optional.empty();
        }
        boolean making = MAKING.contains(words.text(at)) || words.wall(object) || MODAL.contains(words.text(at));
        boolean makes = words.text(at).matches("makes|keeps");
        return makes || !(making || IFFY.contains(words.text(at)))
                ? fragment(end, object, end, Optional.empty())
                : Optional.empty();
    }

    private boolean asked(int end) {
        return YES.matcher(words.normal(end, end + BEHIND)).matches();
    }

    /** No verb that tells: "today a vegan lemon loaf", "dairy free and delicious". */
    private Optional<Subject> fragment(int start, int before, int end, Optional<Meaning> noun) {
        if (isOtherStory(start)
                || ELSEWHERE
                        .matcher(words.normal(end, sentenceEnd(end, BEHIND)))
                        .matches()) {
            return Optional.empty();
        }
        int from = windowStart(before + 1);
        for (int at = from; at <= before; at++) {
            boolean wanting = WANTING.contains(words.text(at))
                            && !isDoing(at)
                            && !(words.text(at).equals("for") && noun.isEmpty() && at < before)
                    || DENYING.contains(words.text(at))
                    || words.text(at).matches("almost|nearly|practically");
            if (wanting) {
                return Optional.empty();
            }
            if (PAST.contains(words.text(at)) && words.text(at - 1).matches("i|we|she|he|they|mum|who")) {
                return Optional.empty();
            }
        }
        if (PERSONS.contains(words.text(before)) || words.text(before).equals("my") && noun.isEmpty()) {
            return Optional.empty();
        }
        return noun.map(Meaning::subject).orElse(Optional.of(Subject.DISH));
    }

    /** "we're making a…". */
    private boolean isDoing(int at) {
        return words.text(at).equals("making") && words.text(at - 1).matches("i'm|we're|am|are");
    }

    private boolean isOtherStory(int start) {
        int from = windowStart(start);
        return phrases.within(Phrases.Kind.OTHER_TIME, from, start)
                || (phrases.within(Phrases.Kind.OTHER_PEOPLE, from, start) && !isOwnAgain(from, start));
    }

    /** "my mum loves it because this is dairy free". */
    private boolean isOwnAgain(int from, int start) {
        for (int at = from; at < start; at++) {
            if (words.text(at).matches("because|this|it|but")) {
                return true;
            }
        }
        return false;
    }

    private int windowStart(int index) {
        int at = index;
        while (at > 0
                && index - at < WINDOW
                && !words.wall(at)
                && !words.text(at).matches("but|anyway|because|so")) {
            at--;
        }
        return at;
    }

    private int sentenceEnd(int from, int reach) {
        int at = from;
        while (at < from + reach && at < words.size() && !words.wall(at)) {
            at++;
        }
        return at;
    }
}
