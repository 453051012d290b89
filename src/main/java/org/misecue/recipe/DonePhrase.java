package org.misecue.recipe;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.PreparationWords.Sort;

/**
 * Finds what is done to an ingredient among the words of its name: before it, "finely grated and strained" ginger, or
 * behind it, butter "melted and left to cool".
 */
final class DonePhrase {

    private static final Set<String> LINKS = Set.of("and", "&", "+", "then", "but", ",", "or");
    private static final Set<String> GO_ON = Set.of(
            "into",
            "in",
            "to",
            "with",
            "until",
            "for",
            "from",
            "by",
            "through",
            "at",
            "on",
            "over",
            "before",
            "after",
            "overnight",
            "if",
            "as",
            "without",
            "while",
            "off",
            "lengthways",
            "lengthwise",
            "crosswise",
            "again",
            "separately",
            "twice",
            "of",
            "out");

    /** What is soft because somebody let it: soft butter, but soft brown sugar is a sugar. */
    private static final Set<String> SOFTENED = Set.of("butter", "margarine", "marg");

    private final List<String> words;

    /** @param words of the name, a comma being a word of its own */
    DonePhrase(List<String> words) {
        this.words = words;
    }

    /** Whether a text begins with what is done: "sifted twice". */
    static boolean begins(String text) {
        return new DonePhrase(Words.split(text.strip())).phrase(0, true) > 0;
    }

    /** How many words at the beginning are preparation; 0 where none is, or where nothing would be left. */
    int before(Pantry pantry) {
        int end = phrases(0, false);
        while (end < words.size() && words.get(end).equals(",")) {
            end++;
        }
        return end == 0 || end >= words.size() || !isName(end) || namesAnother(end, pantry) ? 0 : end;
    }

    /** Where the preparation behind the name begins; the number of words where there is none. */
    int behind() {
        for (int start = 1; start < words.size(); start++) {
            if (isName(start - 1) || PreparationWords.sort(words.get(start - 1)) == Sort.KIND) {
                int end = phrases(start, true);
                boolean goesOn = end < words.size() && GO_ON.contains(lower(end));
                if (end > start && (end == words.size() || goesOn)) {
                    return start;
                }
            }
        }
        return words.size();
    }

    /** The end of one or more phrases that begin here, linked or not; the place itself where none does. */
    private int phrases(int from, boolean behind) {
        int end = phrase(from, behind);
        while (end > from && end < words.size()) {
            int next = LINKS.contains(lower(end)) ? end + 1 : end;
            int more = phrase(next, behind);
            if (more == next) {
                break;
            }
            end = more;
        }
        return end;
    }

    private int phrase(int from, boolean behind) {
        int at = from;
        while (at < words.size() && PreparationWords.sort(words.get(at)) == Sort.MANNER) {
            at++;
        }
        boolean inAManner = at > from;
        if (at == words.size() || !isDone(at, inAManner, behind)) {
            return from;
        }
        at++;
        while (behind && at < words.size() && PreparationWords.sort(words.get(at)) == Sort.MANNER) {
            at++;
        }
        return at;
    }

    private boolean isDone(int at, boolean inAManner, boolean behind) {
        if (lower(at).equals("ground")) {
            return inAManner;
        }
        return switch (PreparationWords.sort(words.get(at))) {
            case DONE, STATE -> true;
            case SOLD -> behind || inAManner || !PreparationWords.isSoldAs(words.get(at), lower(words.size() - 1));
            case BEHIND -> behind || SOFTENED.contains(lower(words.size() - 1));
            case KIND -> inAManner && lower(at - 1).equals("freshly");
            case MANNER, OTHER -> false;
        };
    }

    private boolean isName(int at) {
        Sort sort = PreparationWords.sort(words.get(at));
        return !LINKS.contains(lower(at))
                && (sort == Sort.OTHER || sort == Sort.KIND || sort == Sort.SOLD || sort == Sort.MANNER);
    }

    /** Whether the last of these words belongs to a name that means another thing: "crushed pineapple". */
    private boolean namesAnother(int end, Pantry pantry) {
        int with = longest(end - 1, pantry);
        return with >= longest(end, pantry)
                && with > end
                && !named(end - 1, with, pantry).equals(named(end, with, pantry));
    }

    /** The end of the longest name of the pantry that begins here; the place itself where none does. */
    private int longest(int from, Pantry pantry) {
        int to = words.size();
        while (to > from && named(from, to, pantry).isEmpty()) {
            to--;
        }
        return to;
    }

    private Optional<Ingredient> named(int from, int to, Pantry pantry) {
        return pantry.heardAs(String.join(" ", words.subList(from, to)));
    }

    private String lower(int at) {
        return words.get(at).toLowerCase(Locale.ROOT);
    }
}
