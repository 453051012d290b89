package org.misecue.claims;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.claims.Phrase.Form;
import org.misecue.claims.Subjects.Meaning;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Whether "no eggs", "without dairy" and the like deny something of the dish: much oftener they tell of the bowl. */
final class DenialFraming {

    private static final Pattern OF_NOW = Pattern.compile(
            "(?:left|yet|now|just yet|until|till|showing|visible|to hand|on|wash|shells?|shell in|stuck|over|running|lumps|streaks"
                    + "|today|this week|spare|handy|need|for me|thank)\\b.*");
    private static final Pattern AT_ALL = Pattern.compile(
            "(?:at all|whatsoever|anywhere|needed|required|involved|necessary|to be found|or anything)\\b.*");
    private static final Pattern INSIDE = Pattern.compile("(?:at all |whatsoever |anywhere )?in(?:side|to)? (.*)");
    private static final Pattern DISH =
            Pattern.compile("(?:it|this|these|them|here|there|any of (?:it|this|these)|our|my|the|that)\\b.*");
    private static final Set<String> HERE = Words.set("it this these them here there that");
    private static final Set<String> NOT_ALL = Words.set(
            "bit part half layer bowl stage step jug pan side house fridge shop kitchen corner point tin first "
                    + "second cupboard world batter dough mixture mix filling topping");
    private static final Set<String> GOES_ON =
            Words.set("so and but because it is which if i you we they that's it's or which");
    private static final Set<String> IT = Words.set("it this these they that which they're it's one there");
    private static final Set<String> MADE = Words.set("made baked done cooked entirely completely all recipe one ones");

    private static final int REACH = 8;

    private final WordStream words;
    private final Subjects subjects;
    private final boolean terse;

    DenialFraming(WordStream words, Subjects subjects, boolean terse) {
        this.words = words;
        this.subjects = subjects;
        this.terse = terse;
    }

    Optional<Subject> subject(Phrase phrase) {
        int end = phrase.end();
        String behind = words.normal(end, sentenceEnd(end));
        if (OF_NOW.matcher(behind).matches() || isConditional(phrase.start())) {
            return Optional.empty();
        }
        Matcher inside = INSIDE.matcher(behind);
        Optional<Subject> said = inside.matches() ? inside(end, inside.group(1)) : Optional.empty();
        if (inside.matches() && said.isEmpty()) {
            return Optional.empty();
        }
        boolean stressed = said.isPresent() || AT_ALL.matcher(behind).matches();
        Optional<Subject> holder = holder(phrase);
        boolean claims =
                switch (phrase.form()) {
                    case CONTAINS_NO -> holder.isPresent() || terse || isContain(phrase);
                    case WITHOUT -> terse || isMade(phrase.start());
                    case NOT_ANY -> stressed && isItsOwn(phrase.start()) || holder.isPresent();
                    default -> terse || stressed && isItsOwn(phrase.start()) || holder.isPresent();
                };
        return claims ? Optional.of(said.or(() -> holder).orElse(Subject.DISH)) : Optional.empty();
    }

    private boolean isContain(Phrase phrase) {
        return !words.text(phrase.start() - 1).matches("i|we|you");
    }

    /** "in it", "in the sponge"; empty for a part that the recipe does not know, and for a house or a bowl. */
    private Optional<Subject> inside(int end, String where) {
        int at = end;
        while (!words.text(at).matches("in|inside|into")) {
            at++;
        }
        int noun = at + 1;
        boolean pointing = words.text(noun).matches("this|these|that|the|my|our|any");
        if (pointing && !words.wall(noun + 1)) {
            for (int next = noun + 1;
                    next < noun + 4 && !words.wall(next) && !GOES_ON.contains(words.text(next));
                    next++) {
                if (NOT_ALL.contains(words.text(next)) && subjects.part(next).isEmpty()) {
                    return Optional.empty();
                }
                Optional<Meaning> meaning = subjects.at(next);
                if (meaning.isPresent()) {
                    return meaning.get().subject();
                }
            }
        }
        boolean here = HERE.contains(words.text(noun));
        return here && DISH.matcher(where).matches() ? Optional.of(Subject.DISH) : Optional.empty();
    }

    /** The subject of "it's got no dairy", "this margarine has no milk", "a cake with no eggs". */
    private Optional<Subject> holder(Phrase phrase) {
        int at = phrase.start() - 1;
        boolean contains = phrase.form() == Form.CONTAINS_NO;
        if (words.text(at).matches("absolutely|got|contains|contain|actually|really")) {
            at--;
        }
        if (words.text(phrase.start() - 1).equals("with")) {
            return subjects.before(at).flatMap(Meaning::subject);
        }
        boolean has = words.text(at).matches("has|have|is|it's")
                || words.text(phrase.start() - 1).matches("got|contains|contain")
                || words.text(phrase.start()).matches("hasn't|haven't|doesn't");
        if (!has && !contains) {
            return Optional.empty();
        }
        if (words.text(at).matches("has|have|is")) {
            at--;
        }
        Optional<Meaning> named = subjects.before(at + 1);
        if (named.isPresent()) {
            return named.get().subject();
        }
        boolean there = words.text(at).equals("there");
        return IT.contains(words.text(at)) && !there ? Optional.of(Subject.DISH) : Optional.empty();
    }

    /** "we had no eggs in it" is told of the dish, "you can see no egg" is not. */
    private boolean isItsOwn(int start) {
        return !words.text(start - 1).matches("see|had|i've|we've|find|smell|taste|got|have")
                || words.text(start - 2).matches("it|is|this|they|they're|these");
    }

    private boolean isMade(int start) {
        String before = words.text(start - 1);
        boolean somebodyDoes = words.text(start - 2).matches("i|we|you|they|to|can|could|she|he");
        return !words.wall(start) && !somebodyDoes && (MADE.contains(before) || subjects.isDish(start - 1));
    }

    private boolean isConditional(int start) {
        for (int at = start - 1; at >= 0 && start - at < REACH && !words.wall(at + 1); at--) {
            if (words.text(at)
                    .matches("if|when|until|till|once|can't|could|can|would|want|make|or|never|not|wouldn't")) {
                return true;
            }
            if (words.text(at).matches("but|so|because|and")) {
                return false;
            }
        }
        return false;
    }

    private int sentenceEnd(int from) {
        int at = from;
        while (at < from + REACH && at < words.size() && !words.wall(at)) {
            at++;
        }
        return at;
    }
}
