package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Packings;

/**
 * What stands behind the amount of an ingredient line.
 *
 * @param name the ingredient with the adjectives that tell what to buy
 * @param preparation what is done to it, and notes; empty where there are none
 * @param alternatives what the line offers instead, with "or"
 */
record NamePhrase(String name, String preparation, List<String> alternatives) {

    private static final Pattern BRACKET = Pattern.compile("\\h*[(\\[]([^()\\[\\]]*)[)\\]]");
    /** Behind an "or" these offer nothing else: "or as needed", "or to taste". */
    private static final String NO_OTHER = "(?:as|more|less|to|until|so|enough|a\\h+(?:little|bit|touch))";
    /** What "in" leads to where it does not belong to the name, as it does in "apricots in juice". */
    private static final String SHAPE =
            "(?:\\d|(?:\\p{L}+\\h+){0,2}(?:pieces|cubes|chunks|strips|slices|dice|halves|quarters|segments|wedges))";
    private static final Pattern OR_FIRST = Pattern.compile(
            "^(?:or|alternatively)\\h+(?!" + NO_OTHER + "\\b)(.+)$", Pattern.CASE_INSENSITIVE);
    /** An "or" behind notes offers something else only with an amount of its own or a known name. */
    private static final Pattern OR_LATER = Pattern.compile(",\\h*or\\h+(?:use\\h+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern AN_AMOUNT =
            Pattern.compile("[\\d½¼¾⅓⅔⅛]|(?:an?|one|two|the)\\h", Pattern.CASE_INSENSITIVE);
    /** More of what stands in the list already; "extra" before a word of quality belongs to it. */
    private static final Pattern EXTRA = Pattern.compile(
            "^((?:a\\h+(?:little|bit)\\h+)?(?:extra|more|additional|remaining))\\h+"
                    + "(?!virgin|large|fine|thick|firm|strong|mature|creamy|ripe|dark|light|lean|dry|sharp)(?=\\p{L})",
            Pattern.CASE_INSENSITIVE);
    /** One or two words that may be a sort of a thing. */
    private static final Pattern SORT = Pattern.compile(
            "(?!(?:or|not|but|about|any|see|if|i|from|my|our|the|optional)\\b)[\\p{L}'’-]+(?:\\h[\\p{L}'’-]+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern EACH = Pattern.compile("^each:?\\h+(?:of\\h+)?(?=\\p{L})", Pattern.CASE_INSENSITIVE);
    private static final Pattern LIST = Pattern.compile(",[^,]*,?\\h+(?:and|&)\\h+");
    /** How wide a thing is to be: "9-inch pie crust". */
    private static final Pattern WIDTH = Pattern.compile(
            "^(\\d+(?:[.,/]\\d+)?[\\h-]?(?:inch(?:es)?|in\\.|cm|mm|\")(?:/\\d+\\h?in(?:ch)?)?|\\p{L}+-inch)\\h+(?=\\p{L})", Pattern.CASE_INSENSITIVE);
    /** Where notes begin that no comma divides: names hold neither "for" nor "to", "if", "at" or "plus". */
    private static final Pattern TAIL = Pattern.compile(
            "\\h+(?:[–—-]+\\h+|(?=(?:plus|for|to|at|if|as|such\\h+as|from|straight\\h+from|until|about|preferably|ideally"
                    + "|see|each|per|more|extra|not|any|which|that|whatever|whichever|when|before|after|minimum|including|depending|like|overnight|without|less|or\\h+" + NO_OTHER + "|(?:and|&)\\h+(?:more|extra|some|\\d+|an?|one|two|three)(?=\\h)|with\\h+(?:an?|the|their|its|some|skins?|peel|\\d+)|in\\h+" + SHAPE + ")\\b|@|\\+(?=\\h*(?:[\\d½¼¾⅓⅔⅛]|extra|more|some|an?\\h|for\\h))))",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern GO_ON = Pattern.compile("(?:with|in|to|from)\\b", Pattern.CASE_INSENSITIVE);

    /** Words before a comma that describe what comes behind it, besides words of doing: "large, ripe bananas". */
    static final Set<String> ADJECTIVES = Set.of(
            "large",
            "small",
            "medium",
            "ripe",
            "soft",
            "fresh",
            "unsalted",
            "salted",
            "plain",
            "dark",
            "light",
            "whole",
            "free-range",
            "organic",
            "thick",
            "firm",
            "good-quality",
            "unwaxed",
            "dry",
            "dried");
    /** How a spoon is filled or an amount is meant, written behind it: no preparation. */
    private static final Set<String> FILLED = Set.of(
            "heaped", "heaping", "rounded", "level", "levelled", "leveled", "scant", "generous", "about", "approx",
            "approx.", "approximately", "roughly", "ish", "or so", "or thereabouts");
    private static final Pattern PROPER = Pattern.compile(
            "^(?:Greek|Italian|Parmesan|Dutch|English|Madeira|Medjool|Turkish|French|Swiss|Dijon|Brazil|Marsala|Irish|Scottish|Seville|Cheddar|[A-Z]{2,}|[A-Z][\\d.]).*");

    static NamePhrase of(String rest, String packing) {
        List<String> preparation = new ArrayList<>();
        List<String> alternatives = new ArrayList<>();
        String text = rest.replaceFirst("^[\\h,;:|–—-]+", "");
        boolean each = EACH.matcher(text).find();
        text = takeBrackets(EACH.matcher(text).replaceFirst(""), preparation, alternatives);
        text = takeFirst(WIDTH, takeFirst(EXTRA, text, preparation), preparation);
        int comma = comma(text, each);
        if (comma >= 0) {
            addNotes(text.substring(comma + 1).strip(), preparation, alternatives);
            text = text.substring(0, comma).strip();
        }
        text = takeTail(text, preparation, alternatives);
        text = takeDone(text, Packings.holds(packing), preparation);
        if (each) {
            preparation.add(0, "each");
        }
        Sides sides = Sides.of(text);
        alternatives.addAll(0, sides.others());
        return new NamePhrase(tidy(sides.name()), String.join(", ", preparation), List.copyOf(alternatives));
    }

    private static String takeBrackets(String rest, List<String> preparation, List<String> alternatives) {
        Matcher brackets = BRACKET.matcher(rest);
        List<String> inner = new ArrayList<>();
        String text = brackets.replaceAll(found -> {
            if (isWithinName(rest.substring(0, found.start()), found.group(1), rest.substring(found.end()))) {
                return Matcher.quoteReplacement(found.group());
            }
            inner.add(found.group(1).strip());
            return "";
        });
        inner.stream().filter(each -> !each.isEmpty()).forEach(each -> addPreparation(each, preparation, alternatives));
        return text.strip();
    }

    /** Whether a bracket before the noun gives another name for the same, "caster (superfine) sugar", or a sort of it. */
    private static boolean isWithinName(String before, String inner, String after) {
        String end = after.split("[,;(]", 2)[0].strip();
        return !before.isBlank()
                && !end.isEmpty()
                && !TAIL.matcher(" " + end).lookingAt()
                && !DonePhrase.begins(end)
                && (Pantry.standard().heardAs(inner + " " + end).isPresent()
                        || (SORT.matcher(inner).matches()
                                && Arrays.stream(inner.split("\\h+", -1)).noneMatch(NamePhrase::isDone)));
    }

    private static boolean isDone(String word) {
        return switch (PreparationWords.sort(word)) {
            case DONE, STATE, BEHIND, MANNER, SOLD -> true;
            case KIND, OTHER -> false;
        };
    }

    /** Moves what the pattern finds at the beginning to the preparation. */
    private static String takeFirst(Pattern pattern, String text, List<String> preparation) {
        Matcher found = pattern.matcher(text);
        if (!found.find()) {
            return text;
        }
        preparation.add(0, found.group(1));
        return text.substring(found.end());
    }

    /** What stands behind the first comma: another ingredient, notes, or one behind the other. */
    private static void addNotes(String words, List<String> preparation, List<String> alternatives) {
        Matcher later = OR_LATER.matcher(words);
        if (OR_FIRST.matcher(words).matches()) {
            String[] parts = words.split(",\\h*", 2);
            addPreparation(parts[0], preparation, alternatives);
            addPreparation(parts.length > 1 ? parts[1] : "", preparation, alternatives);
        } else if (later.find() && offers(words.substring(later.end()))) {
            addPreparation(words.substring(0, later.start()), preparation, alternatives);
            alternatives.add(words.substring(later.end()).strip());
        } else {
            addPreparation(words, preparation, alternatives);
        }
    }

    private static boolean offers(String words) {
        return AN_AMOUNT.matcher(words).lookingAt()
                || (Pantry.standard().find(words).isPresent() && !DonePhrase.begins(words));
    }

    private static void addPreparation(String words, List<String> preparation, List<String> alternatives) {
        Matcher or = OR_FIRST.matcher(words);
        if (or.matches()) {
            alternatives.add(or.group(1).strip());
        } else if (!words.isEmpty() && !FILLED.contains(words.toLowerCase(Locale.ROOT))) {
            preparation.add(words);
        }
    }

    /** The first comma that stands neither between adjectives nor in a list of which each is meant; −1 where there is none. */
    private static int comma(String text, boolean each) {
        Matcher list = LIST.matcher(text);
        for (int at = each && list.find() ? list.end() : 0; at < text.length(); at++) {
            if (text.charAt(at) == ';') {
                return at;
            }
            if (text.charAt(at) == ',' && !onlyAdjectives(text.substring(0, at))) {
                return at;
            }
        }
        return -1;
    }

    private static boolean onlyAdjectives(String text) {
        for (String word : text.toLowerCase(Locale.ROOT).split("[\\h,]+", -1)) {
            if (!word.isEmpty()
                    && !ADJECTIVES.contains(word)
                    && PreparationWords.sort(word) == PreparationWords.Sort.OTHER) {
                return false;
            }
        }
        return true;
    }

    private static String takeTail(String text, List<String> preparation, List<String> alternatives) {
        Matcher tail = TAIL.matcher(text);
        if (!tail.find() || tail.start() == 0) {
            return text;
        }
        int start = doneBefore(text, tail.start(), tail.end());
        List<String> notes = new ArrayList<>();
        addPreparation(text.substring(start < tail.start() ? start : tail.end()).strip(), notes, alternatives);
        preparation.addAll(0, notes);
        return text.substring(0, start).strip();
    }

    /** Where the word begins that a tail goes on: the "mixed" of "mixed with 1 tbsp water". */
    private static int doneBefore(String text, int start, int end) {
        int word = text.lastIndexOf(' ', start - 1);
        return word > 0
                        && GO_ON.matcher(text).region(end, text.length()).lookingAt()
                        && PreparationWords.sort(text.substring(word, start)) != PreparationWords.Sort.OTHER
                ? word
                : start;
    }

    /** @param packed whether it comes in a pack: what is chopped in a tin was so when it was bought, but not what is cold */
    private static String takeDone(String text, boolean packed, List<String> preparation) {
        List<String> words = List.of(text.replace(",", " , ").strip().split("\\h+", -1));
        DonePhrase done = new DonePhrase(words);
        int behind = done.behind();
        if (behind < words.size()) {
            preparation.add(0, joined(words.subList(behind, words.size())));
        }
        List<String> kept = words.subList(0, behind);
        boolean bought = packed && PreparationWords.sort(words.get(0)) != PreparationWords.Sort.STATE;
        int first = bought ? 0 : new DonePhrase(kept).before();
        String doneBefore = joined(kept.subList(0, first)).toLowerCase(Locale.ROOT);
        if (!doneBefore.isEmpty() && !FILLED.contains(doneBefore)) {
            preparation.add(0, doneBefore);
        }
        return joined(kept.subList(first, kept.size()));
    }

    private static String joined(List<String> words) {
        return String.join(" ", words).replace(" ,", ",").replaceAll("^[, ]+|[, ]+$", "");
    }

    /** A name as it stands within a sentence: no capital but a proper one, no "of" before it, no stop behind it. */
    static String tidy(String name) {
        String text = name.strip()
                .replaceFirst("(?i)^(?:(?:of|the)\\h+)?", "")
                .replaceAll("\\h{2,}", " ")
                .replaceAll("[\\s.:;,–-]+$", "");
        if (text.isEmpty() || PROPER.matcher(text).matches()) {
            return text;
        }
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
