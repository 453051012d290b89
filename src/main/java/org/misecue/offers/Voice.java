package org.misecue.offers;

import java.util.Set;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Who does what is said: only what viewers may do is an offer. */
enum Voice {
    OFFERED,
    /** "i'm using yoghurt instead of buttermilk". */
    OWN,
    /** Other people, other times. */
    OTHERS,
    /** "don't use margarine". */
    DENIED;

    private static final Set<String> DENYING = Words.set(
            "don't never not wouldn't can't cannot shouldn't won't doesn't isn't aren't couldn't avoid without neither no");
    private static final Set<String> OWN_WORDS = Words.set("i i'm i've we we've we're i'll we'll");
    private static final Set<String> OWN_DOING = Words.set(
            "using used use tried swapped put having had got substituted replaced went going swapping took taking changed "
                    + "making made gone added adding i'll we'll");
    private static final Set<String> THEIRS = Words.set(
            "uses swaps replaces substitutes puts they he she they'd they'll they've people everybody everyone");
    private static final int REACH = 7;

    /** The voice of a verb or of a comparison, by the words of its clause before it. */
    static Voice at(Proposal proposal, WordStream words, Phrases phrases) {
        int verb = proposal.verb();
        boolean bound = proposal.clause() > proposal.start();
        int from = clause(Math.min(proposal.clause(), verb), words);
        int denied = bound ? proposal.clause() : Math.max(from, verb - 4);
        for (int at = denied; at <= verb + 1; at++) {
            if (DENYING.contains(words.text(at)) && !isTag(at, words) && !(at > verb && bound)) {
                return DENIED;
            }
        }
        if (phrases.within(Phrases.Kind.OTHER_PEOPLE, from, verb + 1)
                || phrases.within(Phrases.Kind.OTHER_TIME, from, verb + 1)
                || phrases.within(Phrases.Kind.ELSEWHERE, from, verb + 1)) {
            return isAsked(from, verb, words) ? OFFERED : OTHERS;
        }
        boolean own = false;
        boolean does = false;
        for (int at = from; at <= verb; at++) {
            String word = words.text(at);
            if (THEIRS.contains(word) && !isAsked(from, verb, words)) {
                return OTHERS;
            }
            own |= OWN_WORDS.contains(word)
                    && !words.text(at + 1).matches("think|find|reckon|said|say|know|would|promise|say|like|love");
            does |= own && OWN_DOING.contains(word);
            if (word.matches("you|you'd|you'll|you're|you've|i'd")) {
                own = false;
                does = false;
            }
        }
        return does ? OWN : OFFERED;
    }

    private static boolean isAsked(int from, int verb, WordStream words) {
        for (int at = from; at <= verb; at++) {
            if (words.text(at).matches("ask|asked|asks|ask|wrote")) {
                return true;
            }
        }
        return false;
    }

    private static boolean isTag(int at, WordStream words) {
        return words.text(at).equals("no")
                && (words.text(at + 1).matches("problem|worries|matter|need") || words.wall(at + 1));
    }

    private static int clause(int index, WordStream words) {
        int at = index;
        while (at > 0
                && index - at < REACH
                && !words.wall(at)
                && !words.text(at).matches("but|because|so|and|anyway")) {
            at--;
        }
        return at;
    }
}
