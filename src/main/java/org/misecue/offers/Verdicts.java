package org.misecue.offers;

import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Words by which a food is approved of ("works too", "is fine") or told to be taken ("use", "go for"). */
final class Verdicts {

    private static final Set<String> VERBS = Words.set(
            "work works worked will would is are was were be do does can could should might goes go it's that's let hide use "
                    + "take try put add you'd you'll");
    private static final String SURELY =
            "(?:(?:absolutely|also|just|perfectly|really|always|totally|quite|very|probably|even|actually) )*";
    private static final String TOO = "(?: (?:too|as well|just as well|instead|either way|just fine))?";
    private static final Pattern SERVES = Pattern.compile("(?:" + SURELY
            + "(?:works?|will work|would work|'ll work|can work|could work|will do|would do|'ll do|does the job|does the same job|does the trick|do the job|do the trick|do the same"
            + "|makes? a good (?:swap|substitute|stand in|replacement)|can stand in|can take (?:its|the) place"
            + "|(?:is|are|it is|that is|would be|will be|it's) " + SURELY
            + "(?:fine|ok|okay|all right|alright|good too|as good|just as good))"
            + TOO + "|\\w+s it (?:too|as well|just as well|instead|every bit as well))\\b.*");
    private static final Pattern PLEASES = Pattern.compile("(?:" + SURELY
            + "(?:is|are|it is|that is|would be|will be|makes|it's) (?:an? )?" + SURELY
            + "(?:lovely|nice|great|perfect|delicious|good|gorgeous|brilliant|wonderful|beautiful|best|grand))\\b.*");
    private static final Pattern THERE_WORKS = Pattern.compile("(?:is|are) what (?:i|you)'?d? use\\b.*");
    private static final Pattern USE = Pattern.compile(
            "(?:use|take|try|do|get|buy|blitz|go for|go with|swap in|add|put in|pop in|put|chuck in|chuck|tip in|reach for|sub in|substitute|substitute in|pick|have|want|need|stir in"
                    + "|throw in)\\b(?: about| around| just| in| instead)?");
    private static final int REACH = 6;

    private final WordStream words;

    Verdicts(WordStream words) {
        this.words = words;
    }

    static boolean isVerb(String word) {
        return VERBS.contains(word);
    }

    /** "margarine works too". */
    boolean servesAt(int at) {
        return !words.wall(at) && SERVES.matcher(ahead(at)).matches();
    }

    /** "…would be lovely": enough only where something else shows that it takes a place. */
    boolean pleasesAt(int at) {
        String ahead = ahead(at);
        return !words.wall(at)
                && (SERVES.matcher(ahead).matches()
                        || PLEASES.matcher(ahead).matches()
                        || THERE_WORKS.matcher(ahead).matches());
    }

    /** Where what is told to be taken begins; empty where nothing is. */
    OptionalInt useAt(int at) {
        Matcher use = USE.matcher(words.normal(at, at + 4));
        if (!use.lookingAt()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(at + Foods.count(use.group()));
    }

    private String ahead(int at) {
        int end = at;
        while (end < at + REACH && end < words.size() && (end == at || !words.wall(end))) {
            end++;
        }
        return words.normal(at, end);
    }
}
