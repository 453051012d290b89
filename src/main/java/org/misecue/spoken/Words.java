package org.misecue.spoken;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Words of written text in the form in which they are compared with what is heard. */
public final class Words {

    private static final Set<String> SMALL = set(
            "of the a an and or for with in to plus at into on from your it is until then about over their " + "them");

    private Words() {}

    /** The words of a list that is written as one text. */
    public static Set<String> set(String words) {
        return Set.copyOf(List.of(words.split(" ")));
    }

    /** The telling words of a text, in the singular and in order. */
    public static Set<String> content(String text) {
        Set<String> content = new LinkedHashSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).replace('é', 'e').split("[^a-z']+")) {
            if (word.length() > 1 && !SMALL.contains(word)) {
                content.add(singular(word));
            }
        }
        return content;
    }

    /** A plain rule of English plurals; good enough for names of food. */
    public static String singular(String word) {
        if (word.length() > 4 && word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.length() > 4
                && (word.endsWith("oes") || word.endsWith("xes") || word.endsWith("ches") || word.endsWith("shes"))) {
            return word.substring(0, word.length() - 2);
        }
        if (word.endsWith("halves") || word.endsWith("leaves") || word.endsWith("loaves")) {
            return word.substring(0, word.length() - 3) + "f";
        }
        boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us");
        return plural ? word.substring(0, word.length() - 1) : word;
    }
}
