package org.misecue.prep;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where a step's text names an ingredient, and in which of its clauses: what is done at once stands in one clause. */
public final class StepWords {

    private static final Pattern CLAUSE_END = Pattern.compile("[.;!:]\\s|,? then |, and then ");

    /** A name that is said without its form; baking powder is not "the baking", nor is custard powder custard. */
    private static final Pattern FORM =
            Pattern.compile("^(?!baking|custard|milk|curry)([\\p{L} -]+) (?:powder|extract|essence)$");

    private StepWords() {}

    /**
     * The place of the ingredient's name, or of the last word of it, in the text; empty where it is not named. "The cocoa"
     * names cocoa powder.
     */
    public static OptionalInt whereNamed(String text, String ingredient) {
        String name = ingredient.toLowerCase(Locale.ROOT).strip();
        String lastWord = name.substring(name.lastIndexOf(' ') + 1);
        Stream<String> form = FORM.matcher(name).results().map(match -> match.group(1));
        return Stream.concat(Stream.of(name, lastWord), form)
                .map(word -> find(text, word))
                .flatMapToInt(OptionalInt::stream)
                .findFirst();
    }

    private static OptionalInt find(String text, String name) {
        if (name.isEmpty()) {
            return OptionalInt.empty();
        }
        String stem = name.endsWith("s") ? name.substring(0, name.length() - 1) : name;
        Matcher matcher = Pattern.compile("\\b" + Pattern.quote(stem) + "(?:s|es)?\\b", Pattern.UNICODE_CHARACTER_CLASS)
                .matcher(text.toLowerCase(Locale.ROOT));
        return matcher.find() ? OptionalInt.of(matcher.start()) : OptionalInt.empty();
    }

    /** The clause that holds a place in the text, from 0. */
    static int clauseAt(String text, int place) {
        List<Integer> ends =
                CLAUSE_END.matcher(text).results().map(MatchResult::start).toList();
        return (int) ends.stream().filter(end -> end < place).count();
    }
}
