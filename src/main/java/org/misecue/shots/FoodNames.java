package org.misecue.shots;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.prep.Bowl;
import org.misecue.prep.StepWords;
import org.misecue.prep.Wording;

/**
 * The food of an action in words. At its first use a bowl has its own name; what an earlier step made is called as the
 * method calls it: "the plum juice", "the dough".
 *
 * @param before the steps before this one
 * @param text this step
 * @param end where the next action begins in the text
 * @param atHand what the last action of this step worked on; empty where there was none
 */
record FoodNames(Action action, String before, int step, String text, int end, String atHand) {

    /** From the article on, to the first word that is no part of a name. */
    private static final Pattern NAME = Pattern.compile(
            "(?:the|your|both|all)\\h+([\\p{L}-]+(?:\\h+[\\p{L}-]+){0,3}?)(?=[.,;:!?)]|$|\\h+(?:on|in|into|"
                    + "with|and|or|over|to|until|for|at|from|off|onto|around|across|evenly|then|up|out|if|cut|between|by|"
                    + "down|through|together|is|are|under|well|while|all|back|a|an|the|very|gently|firmly|lightly)\\b)");

    /** What the words of an action may be followed by: "fold in | the dry mix", "knead | the dough". */
    private static final Pattern OBJECT =
            Pattern.compile("\\h*(?:in|through|out|up|down|together|over)?\\h*" + NAME.pattern());

    private static final Pattern LAST_ARTICLE = Pattern.compile("\\h(?:the|both)$", Pattern.CASE_INSENSITIVE);

    /** What methods make; the last one named is what "it" is. */
    private static final Pattern MADE = Pattern.compile(
            "\\b(?:dough|pastry|batter|meringue|custard|sponges?|cakes?|crumbs|caramel|ganache|filling|syrup|mixture|"
                    + "buns|rolls|biscuits|loaf|loaves|tart|cheesecake|flatbreads|crust|jelly|icing|glaze)\\b",
            Pattern.CASE_INSENSITIVE);

    /** The tray tells the bowls of one food apart; the picture shows one food. */
    private static final Pattern ADDITION = Pattern.compile(", addition \\d+ of \\d+$");

    static final String UNNAMED = "the mixture";

    /**
     * What is there already: what the method says the action is done to, or else what this step is at, or the last thing
     * that the method made.
     */
    String food() {
        boolean told = action.place() < text.length();
        if (told && object().isEmpty() && !atHand.isEmpty()) {
            return atHand;
        }
        return object().orElseGet(() -> {
            Matcher made = MADE.matcher(before + " " + text.substring(0, Math.min(action.end(), text.length())));
            String last = UNNAMED;
            while (made.find()) {
                last = "the " + made.group().toLowerCase(Locale.ROOT);
            }
            return last;
        });
    }

    /** What goes in, with what the method says the action is done to; what is there already where nothing goes in. */
    String ingredients() {
        Set<String> names = new LinkedHashSet<>();
        object().ifPresent(names::add);
        names.addAll(goingIn());
        return names.isEmpty() ? food() : Wording.list(names);
    }

    /** What the next action finds there if the method only says "it"; empty where this one, say the oven's, has no food. */
    String leaves() {
        Set<String> names = goingIn();
        if (names.isEmpty()) {
            return action.template().adds() == Adds.NOTHING ? atHand : object().orElse(atHand);
        }
        String only = names.iterator().next();
        return names.size() > 1 || object().isPresent() ? UNNAMED : only.startsWith("the ") ? only : "the " + only;
    }

    Set<String> goingIn() {
        Set<String> names = new LinkedHashSet<>();
        action.bowls().forEach(bowl -> names.add(name(bowl)));
        action.loose().forEach(thing -> names.add(thing.line().ingredient()));
        return names;
    }

    private Optional<String> object() {
        Matcher name = OBJECT.matcher(text).region(afterVerb(), Math.max(action.end(), end));
        if (!name.lookingAt()) {
            return Optional.empty();
        }
        boolean weighed = action.bowls().stream()
                .flatMap(bowl -> bowl.contents().stream())
                .map(content -> StepWords.whereNamed(text, content.ingredient()))
                .anyMatch(place ->
                        place.isPresent() && place.getAsInt() >= name.start() && place.getAsInt() < name.end());
        return weighed ? Optional.empty() : Optional.of("the " + name.group(1));
    }

    /** Before the article where that is among the words that tell the action: "sandwich | the cakes". */
    private int afterVerb() {
        Matcher article = LAST_ARTICLE.matcher(text).region(action.place(), action.end());
        return article.find() ? article.start() : action.end();
    }

    private String name(Bowl bowl) {
        boolean fresh = bowl.step() == step || bowl.contents().size() > 1;
        return fresh
                ? ADDITION.matcher(bowl.name()).replaceFirst("")
                : inMethod(bowl.contents().get(0).ingredient());
    }

    private String inMethod(String ingredient) {
        OptionalInt place = StepWords.whereNamed(text, ingredient);
        Matcher names = NAME.matcher(text);
        while (place.isPresent() && names.find()) {
            if (names.start() <= place.getAsInt() && place.getAsInt() < names.end()) {
                return "the " + names.group(1);
            }
        }
        return "the " + ingredient;
    }

    /** Those that are weighed for this step; what an earlier step took is not said again. */
    List<Bowl> firstUsed() {
        return action.bowls().stream().filter(bowl -> bowl.step() == step).toList();
    }
}
