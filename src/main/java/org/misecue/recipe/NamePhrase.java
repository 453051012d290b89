package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;

/**
 * What stands behind the amount of an ingredient line.
 *
 * @param name the ingredient with the adjectives that tell what to buy
 * @param preparation what is done to it, and notes; empty where there are none
 * @param alternatives what the line offers instead, with "or"
 */
record NamePhrase(String name, String preparation, List<String> alternatives) {

    private static final Pattern BRACKET = Pattern.compile("\\h*[(\\[]([^()\\[\\]]*)[)\\]]");
    private static final Pattern OR_FIRST = Pattern.compile("^(?:or|alternatively)\\h+(.+)$", Pattern.CASE_INSENSITIVE);
    /** Where notes begin that no comma divides: names hold neither "for" nor "to", "if", "at" or "plus". */
    private static final Pattern TAIL = Pattern.compile(
            "\\h+(?:[–—-]+\\h+|(?=(?:plus|\\+|for|to|at|if|as|such\\h+as|from|straight\\h+from|until|about|preferably|ideally"
                    + "|see|each|per|more|extra|depending|like|overnight)\\b|\\+))",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern OR = Pattern.compile("\\h+or\\h+", Pattern.CASE_INSENSITIVE);
    /** Words before a comma that describe what comes behind it, besides words of doing: "large, ripe bananas". */
    private static final Set<String> ADJECTIVES = Set.of(
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
    /** How a spoon is filled, written behind it: no preparation. */
    private static final Set<String> FILLED = Set.of("heaped", "rounded", "levelled", "leveled");
    /** Words that need the noun of the other side of an "or": "vegetable or sunflower oil". */
    private static final Set<String> HALF_NAMES = Set.of(
            "vegetable",
            "sunflower",
            "olive",
            "rapeseed",
            "dark",
            "light",
            "milk",
            "white",
            "black",
            "plain",
            "caster",
            "brown",
            "salted",
            "unsalted",
            "strong",
            "golden",
            "whole",
            "skimmed",
            "red",
            "green",
            "cow's",
            "oat",
            "self-raising",
            "double",
            "whipping",
            "granulated",
            "muscovado",
            "demerara",
            "icing",
            "apple",
            "cider",
            "fine",
            "sea",
            "almond");

    private static final Pattern PROPER = Pattern.compile(
            "^(?:Greek|Italian|Parmesan|Dutch|English|Madeira|Medjool|Turkish|French|Swiss|Dijon|Brazil|Marsala|Irish|Scottish|Seville|Cheddar|[A-Z]{2,}|[A-Z][\\d.]).*");

    private static final Pattern LEAD = Pattern.compile("(?i)^(?:each\\h+)?(?:(?:of|the)\\h+)?");
    private static final Pattern BLANKS = Pattern.compile("\\h{2,}");
    private static final Pattern END = Pattern.compile("(?<![\\s.:;,–-])[\\s.:;,–-]+$");
    private static final Pattern COMMAS = Pattern.compile("^[, ]+|(?<![, ])[, ]+$");

    static NamePhrase of(String rest, String packing, Pantry pantry) {
        List<String> preparation = new ArrayList<>();
        List<String> alternatives = new ArrayList<>();
        String text = takeBrackets(rest, preparation, alternatives);
        int comma = comma(text);
        if (comma >= 0) {
            addPreparation(text.substring(comma + 1).strip(), preparation, alternatives);
            text = text.substring(0, comma).strip();
        }
        text = takeTail(text, preparation);
        boolean loose = packing.isEmpty() || packing.equals("piece");
        text = takeDone(text, loose, preparation, pantry);
        String name = takeAlternatives(text, alternatives, pantry);
        return new NamePhrase(tidy(name), String.join(", ", preparation), List.copyOf(alternatives));
    }

    private static String takeBrackets(String rest, List<String> preparation, List<String> alternatives) {
        Matcher brackets = BRACKET.matcher(rest);
        List<String> inner = new ArrayList<>();
        String text = brackets.replaceAll(found -> {
            inner.add(found.group(1).strip());
            return "";
        });
        inner.stream().filter(each -> !each.isEmpty()).forEach(each -> addPreparation(each, preparation, alternatives));
        return text.strip();
    }

    private static void addPreparation(String words, List<String> preparation, List<String> alternatives) {
        Matcher or = OR_FIRST.matcher(words);
        if (or.matches()) {
            alternatives.add(or.group(1).strip());
        } else if (!words.isEmpty()) {
            preparation.add(words);
        }
    }

    /** The first comma that does not stand between adjectives; −1 where there is none. */
    private static int comma(String text) {
        for (int at = 0; at < text.length(); at++) {
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
            if (!word.isEmpty() && !ADJECTIVES.contains(word) && !isDone(word)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDone(String word) {
        return switch (PreparationWords.sort(word)) {
            case DONE, STATE, MANNER -> true;
            case BEHIND, KIND, SOLD, OTHER -> false;
        };
    }

    private static String takeTail(String text, List<String> preparation) {
        Matcher tail = TAIL.matcher(text);
        if (!tail.find() || tail.start() == 0) {
            return text;
        }
        String words = text.substring(tail.end()).strip();
        if (!words.isEmpty()) {
            preparation.add(0, words);
        }
        return text.substring(0, tail.start()).strip();
    }

    private static String takeDone(String text, boolean before, List<String> preparation, Pantry pantry) {
        List<String> words = List.of(text.replace(",", " , ").strip().split("\\h+", -1));
        DonePhrase done = new DonePhrase(words);
        int behind = done.behind();
        if (behind < words.size()) {
            preparation.add(0, joined(words.subList(behind, words.size())));
        }
        List<String> kept = words.subList(0, behind);
        int first = before ? new DonePhrase(kept).before(pantry) : 0;
        String doneBefore = joined(kept.subList(0, first)).toLowerCase(Locale.ROOT);
        if (!doneBefore.isEmpty() && !FILLED.contains(doneBefore)) {
            preparation.add(0, doneBefore);
        }
        return joined(kept.subList(first, kept.size()));
    }

    private static String joined(List<String> words) {
        return COMMAS.matcher(String.join(" ", words).replace(" ,", ",")).replaceAll("");
    }

    private static String takeAlternatives(String text, List<String> alternatives, Pantry pantry) {
        String[] sides = OR.split(text, -1);
        if (sides.length == 1) {
            return text;
        }
        String other = sides[sides.length - 1].strip();
        String noun = other.contains(" ") ? Nouns.last(other) : "";
        for (int at = 1; at < sides.length; at++) {
            alternatives.add(at - 1, completed(sides[at], at < sides.length - 1 ? noun : "", other, pantry));
        }
        return completed(sides[0], noun, other, pantry);
    }

    private static String completed(String side, String noun, String other, Pantry pantry) {
        Optional<String> known = known(side, other, pantry);
        if (known.isPresent()) {
            return known.get();
        }
        String last = Nouns.last(side).toLowerCase(Locale.ROOT);
        return !noun.isEmpty() && HALF_NAMES.contains(last) ? side.strip() + " " + noun : side.strip();
    }

    /** A side that names nothing by itself, with the end of the other side that makes it a name of the pantry. */
    private static Optional<String> known(String side, String other, Pantry pantry) {
        String start = side.strip();
        if (start.equals(other) || pantry.find(start).isPresent()) {
            return Optional.empty();
        }
        String[] words = other.split("\\h+", -1);
        for (int from = 1; from < words.length; from++) {
            String name = start + " " + String.join(" ", List.of(words).subList(from, words.length));
            if (pantry.heardAs(name).isPresent()) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    /** A name as it stands within a sentence: no capital but a proper one, no "of" before it, no stop behind it. */
    static String tidy(String name) {
        String text = LEAD.matcher(name.strip()).replaceFirst("");
        text = END.matcher(BLANKS.matcher(text).replaceAll(" ")).replaceFirst("");
        if (text.isEmpty() || PROPER.matcher(text).matches()) {
            return text;
        }
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
