package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;

/** Gathers what a line says about its ingredient: what is done to it, and what may be used instead. */
final class Notes {

    /** Behind an "or" these offer nothing else: "or as needed", "or to taste". */
    static final String NO_OTHER = "(?:as|more|less|to|until|so|enough|a\\h+(?:little|bit|touch))";

    private static final Pattern OR_FIRST =
            Pattern.compile("^(?:or|alternatively)\\h+(?!" + NO_OTHER + "\\b)(.+)$", Pattern.CASE_INSENSITIVE);
    /** An "or" behind notes offers something else only with an amount of its own or a known name. */
    private static final Pattern OR_LATER = Pattern.compile(",\\h*or\\h+(?:use\\h+)?", Pattern.CASE_INSENSITIVE);

    private static final Pattern AN_AMOUNT =
            Pattern.compile("[\\d½¼¾⅓⅔⅛]|(?:an?|one|two|the)\\h", Pattern.CASE_INSENSITIVE);
    /** How a spoon is filled or an amount is meant, written behind it: no preparation. */
    private static final Set<String> FILLED = Set.of(
            "heaped",
            "heaping",
            "rounded",
            "level",
            "levelled",
            "leveled",
            "scant",
            "generous",
            "about",
            "approx",
            "approx.",
            "approximately",
            "roughly",
            "ish",
            "or so",
            "or thereabouts");

    private final Pantry pantry;
    private final List<String> preparation = new ArrayList<>();
    private final List<String> alternatives = new ArrayList<>();

    Notes(Pantry pantry) {
        this.pantry = pantry;
    }

    /** Adds a note, or what it offers with "or". */
    void add(String words) {
        add(preparation.size(), words);
    }

    /** Adds a note before all others. */
    void addBefore(String words) {
        add(0, words);
    }

    private void add(int place, String words) {
        Matcher or = OR_FIRST.matcher(words);
        if (or.matches()) {
            alternatives.add(or.group(1).strip());
        } else if (!words.isBlank() && !FILLED.contains(words.toLowerCase(Locale.ROOT))) {
            preparation.add(place, words);
        }
    }

    /** Adds what stands behind the first comma: another ingredient, notes, or one behind the other. */
    void addList(String words) {
        Matcher later = OR_LATER.matcher(words);
        if (OR_FIRST.matcher(words).matches()) {
            String[] parts = words.split(",\\h*", 2);
            add(parts[0]);
            add(parts.length > 1 ? parts[1] : "");
        } else if (later.find() && offers(words.substring(later.end()))) {
            add(words.substring(0, later.start()));
            alternatives.add(words.substring(later.end()).strip());
        } else {
            add(words);
        }
    }

    private boolean offers(String words) {
        return AN_AMOUNT.matcher(words).lookingAt() || (pantry.find(words).isPresent() && !DonePhrase.begins(words));
    }

    void addAlternativesBefore(List<String> others) {
        alternatives.addAll(0, others);
    }

    String preparation() {
        return String.join(", ", preparation);
    }

    List<String> alternatives() {
        return List.copyOf(alternatives);
    }
}
