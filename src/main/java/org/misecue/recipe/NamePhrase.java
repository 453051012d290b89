package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Blanks;
import org.misecue.quantity.Packings;

/**
 * What stands behind the amount of an ingredient line.
 *
 * @param name the ingredient with the adjectives that tell what to buy
 * @param preparation what is done to it, and notes; empty where there are none
 * @param alternatives what the line offers instead, with "or"
 */
record NamePhrase(String name, String preparation, List<String> alternatives) {

    private static final Cued BRACKET = Cued.of("\\h*[(\\[]([^()\\[\\]]*)[)\\]]");
    /** More of what stands in the list already; "extra" before a word of quality belongs to it. */
    private static final Cued EXTRA =
            Cued.inAnyCase("^((?:a\\h+(?:little|bit)\\h+)?(?:extra|more|additional|remaining))\\h+"
                    + "(?!virgin|large|fine|thick|firm|strong|mature|creamy|ripe|dark|light|lean|dry|sharp)(?=\\p{L})");

    private static final Cued EACH = Cued.inAnyCase("^each:?\\h+(?:of\\h+)?(?=\\p{L})");
    private static final Cued LIST = Cued.of(",[^,]*,?\\h+(?:and|&)\\h+");
    /** How wide a thing is to be: "9-inch pie crust". */
    private static final Cued WIDTH = Cued.inAnyCase(
            "^(\\d+(?:[.,/]\\d+)?[\\h-]?(?:inch(?:es)?|in\\.|cm|mm|\")(?:/\\d+\\h?in(?:ch)?)?|\\p{L}+-inch)\\h+(?=\\p{L})");
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

    private static final Pattern PROPER = Pattern.compile(
            "^(?:Greek|Italian|Parmesan|Dutch|English|Madeira|Medjool|Turkish|French|Swiss|Dijon|Brazil|Marsala|Irish|Scottish|Seville|Cheddar|[A-Z]{2,}|[A-Z][\\d.]).*");

    private static final Pattern COMMAS_AND_BLANKS = Pattern.compile("[\\h,]+");
    private static final String FRONT = ",;:|–—-";
    private static final String END = " \t\n\u000b\f\r.:;,–-";
    private static final String COMMAS = ", ";
    private static final Cued LEAD = Cued.inAnyCase("^(?:of|the)\\h+");
    private static final Pattern BLANKS = Pattern.compile("\\h{2,}");

    static NamePhrase of(String rest, String packing, Pantry pantry) {
        Notes notes = new Notes(pantry);
        Wording front = Wording.of(withoutFront(rest));
        boolean each = EACH.standsIn(front);
        Wording plain = takeBrackets(EACH.replaceFirst(front, ""), notes, pantry);
        String text = takeFirst(WIDTH, takeFirst(EXTRA, plain, notes), notes).text();
        int comma = comma(text, each);
        if (comma >= 0) {
            notes.addList(text.substring(comma + 1).strip());
            text = text.substring(0, comma).strip();
        }
        Optional<Tail> tail = Tail.in(text);
        tail.ifPresent(found -> notes.addBefore(found.notes()));
        text = takeDone(tail.map(Tail::before).orElse(text), Packings.holds(packing), notes, pantry);
        if (each) {
            notes.addBefore("each");
        }
        Sides sides = Sides.of(text, pantry);
        notes.addAlternativesBefore(sides.others());
        return new NamePhrase(tidy(sides.name()), notes.preparation(), notes.alternatives());
    }

    private static String withoutFront(String text) {
        int start = 0;
        while (start < text.length() && (Blanks.is(text.charAt(start)) || FRONT.indexOf(text.charAt(start)) >= 0)) {
            start++;
        }
        return text.substring(start);
    }

    private static Wording takeBrackets(Wording wording, Notes notes, Pantry pantry) {
        if (!BRACKET.mayStandIn(wording)) {
            return wording.strip();
        }
        String rest = wording.text();
        Matcher brackets = BRACKET.pattern().matcher(rest);
        List<String> inner = new ArrayList<>();
        String text = brackets.replaceAll(found -> {
            String before = rest.substring(0, found.start());
            if (InnerBracket.isName(before, found.group(1), rest.substring(found.end()), pantry)) {
                return Matcher.quoteReplacement(found.group());
            }
            inner.add(found.group(1).strip());
            return "";
        });
        inner.forEach(notes::add);
        return Wording.of(text.strip());
    }

    /** Moves what the pattern finds at the beginning to the preparation. */
    private static Wording takeFirst(Cued pattern, Wording text, Notes notes) {
        Optional<Matcher> found = pattern.firstIn(text, 0);
        found.ifPresent(first -> notes.addBefore(first.group(1)));
        return found.map(first -> Wording.of(text.text().substring(first.end())))
                .orElse(text);
    }

    /** The first comma that stands neither between adjectives nor in a list of which each is meant; −1 where there is none. */
    private static int comma(String text, boolean each) {
        Matcher list = LIST.pattern().matcher(text);
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
        for (String word : COMMAS_AND_BLANKS.split(text.toLowerCase(Locale.ROOT), -1)) {
            if (!word.isEmpty()
                    && !ADJECTIVES.contains(word)
                    && PreparationWords.sort(word) == PreparationWords.Sort.OTHER) {
                return false;
            }
        }
        return true;
    }

    /** @param packed whether it comes in a pack: what is chopped in a tin was so when it was bought, but not what is cold */
    private static String takeDone(String text, boolean packed, Notes notes, Pantry pantry) {
        List<String> words = Words.split(text.replace(",", " , ").strip());
        DonePhrase done = new DonePhrase(words);
        int behind = done.behind();
        if (behind < words.size()) {
            notes.addBefore(joined(words.subList(behind, words.size())));
        }
        List<String> kept = words.subList(0, behind);
        boolean bought = packed && PreparationWords.sort(words.get(0)) != PreparationWords.Sort.STATE;
        int first = bought ? 0 : new DonePhrase(kept).before(pantry);
        notes.addBefore(joined(kept.subList(0, first)).toLowerCase(Locale.ROOT));
        return joined(kept.subList(first, kept.size()));
    }

    private static String joined(List<String> words) {
        String joined = String.join(" ", words).replace(" ,", ",");
        int start = 0;
        while (start < joined.length() && COMMAS.indexOf(joined.charAt(start)) >= 0) {
            start++;
        }
        return withoutEnd(joined.substring(start), COMMAS);
    }

    private static String withoutEnd(String text, String signs) {
        int end = text.length();
        while (end > 0 && signs.indexOf(text.charAt(end - 1)) >= 0) {
            end--;
        }
        return text.substring(0, end);
    }

    /** A name as it stands within a sentence: no capital but a proper one, no "of" before it, no stop behind it. */
    static String tidy(String name) {
        String bare = LEAD.replaceFirst(Wording.of(name.strip()), "").text();
        String text = withoutEnd(BLANKS.matcher(bare).replaceAll(" "), END);
        if (text.isEmpty() || isCapital(text.charAt(0)) && PROPER.matcher(text).matches()) {
            return text;
        }
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static boolean isCapital(char sign) {
        return sign >= 'A' && sign <= 'Z';
    }
}
