package org.misecue.claims;

import java.util.Optional;
import java.util.Set;
import org.misecue.claims.Subjects.Meaning;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Whether a phrase is a claim, by the words around it, and what it is about. */
final class Framing {

    private static final Set<String> IS = Words.set("is are they're it's that's am be was were being been stays stay");
    private static final Set<String> ALMOST = Words.set("almost nearly practically virtually barely mostly nearly");
    private static final Set<String> OBJECTS = Words.set("it this these them that yours mine everything one");
    private static final Set<String> NOT_EATEN = Words.set(
            "kitchen kitchens household home house school nursery bakery cafe café shop shops aisle section shelf friend "
                    + "friends guest guests people person diet diets lifestyle baking baker bakers eater eaters crowd lot "
                    + "customer customers cookbook book channel blog month week restaurant family daughter son sister "
                    + "mates mate movement life market zone table range logo label sticker police");
    private static final Set<String> OPTIONS =
            Words.set("version versions option options alternative alternatives swap substitute substitutes");
    private static final Set<String> PRESENTING = Words.set("is here's it's that's this");

    private final WordStream words;
    private final Subjects subjects;
    private final Afterwords afterwords;
    private final OthersTalk others;
    private final DenialFraming denials;
    private final Fragments fragments;
    private final Predicates predicates;

    Framing(WordStream words, Subjects subjects, boolean terse) {
        this.words = words;
        this.subjects = subjects;
        this.afterwords = new Afterwords(words);
        this.others = new OthersTalk(words);
        this.denials = new DenialFraming(words, subjects, terse);
        this.fragments = new Fragments(words, afterwords, others);
        this.predicates = new Predicates(words, subjects, afterwords, others, fragments);
    }

    /** What the claim is about; empty where the phrase is none. The end is that of all claims that are joined to it. */
    Optional<Subject> subject(Phrase phrase, int start, int end) {
        if (afterwords.takeBack(end) || afterwords.except(end)) {
            return Optional.empty();
        }
        return switch (phrase.form()) {
            case QUALITY -> quality(start, end);
            case SUITS -> words.text(start + 2).equals("to") ? given(start) : quality(start, end);
            case MAY_EAT -> isDenied(start) ? Optional.empty() : Optional.of(Subject.DISH);
            case NO, CONTAINS_NO, NOT_ANY, WITHOUT ->
                others.leadsTo(start) ? Optional.empty() : denials.subject(phrase);
        };
    }

    private boolean isDenied(int start) {
        return Negations.isOne(words.text(start - 1)) || Negations.isOne(words.text(start - 2));
    }

    /** "you can give this to…", but "you can't". */
    private Optional<Subject> given(int start) {
        return Negations.endsWithin(words, start) || Fragments.IFFY.contains(words.text(start - 2))
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
        int before = Degrees.before(words, start);
        boolean onlyNot = words.text(before).matches("only|merely")
                && words.text(before - 1).equals("not");
        if (onlyNot) {
            before = Degrees.before(words, before - 1);
        }
        String governing = words.border(before + 1) && words.wall(before + 1) ? "" : words.text(before);
        if (Negations.isOne(governing) || ALMOST.contains(governing)) {
            return Optional.empty();
        }
        if (!governing.isEmpty() && IS.contains(governing)) {
            return predicates.of(before, end, noun);
        }
        if (governing.matches("says|say|said|marked|labelled")) {
            return Optional.empty();
        }
        if (noun.isPresent() && isOffered(before, noun.get())) {
            return Optional.empty();
        }
        if (OBJECTS.contains(governing) && noun.isEmpty()) {
            return fragments.object(before, end);
        }
        return fragments.of(start, before, end, noun);
    }

    /** "or use vegan butter", "it works with gluten free flour": of what viewers may take. */
    private boolean isOffered(int before, Meaning noun) {
        boolean ingredient = noun.subject()
                .filter(subject -> subject.kind() == Subject.Kind.INGREDIENT)
                .isPresent();
        boolean mine = words.text(before - 1).matches("start|mine|made|starting|begin");
        return ingredient
                && ((words.text(before).matches("or|with|works|swap|try|for|like|into") && !mine)
                        || words.text(before - 1).equals("or")
                        || afterwords.except(noun.end()));
    }

    private boolean isPresented(int start) {
        int before = start - 1;
        while (before >= 0 && start - before < 4 && words.text(before).matches("the|our|my|a|completely|totally")) {
            before--;
        }
        return PRESENTING.contains(words.text(before))
                && !words.text(before - 1).equals("if");
    }
}
