package org.misecue.spoken;

import java.util.Set;

/** "She says four knobs of it, I chop up a hundred grams": where it is the speaker who does what an amount is for. */
public final class OwnDoing {

    private static final int REACH = 6;
    private static final Set<String> SPEAKER = Words.set("i i'm i've i'll we we're we've we'll mine ours");
    private static final Set<String> OTHERS = Words.set("she he they she's he's they're hers his theirs her their you");
    /** What one does with the mouth and the head tells of no amount of one's own. */
    private static final Set<String> TELLING = Words.set(
            "said say says told think thought reckon suppose believe guess know knew remember heard hear call mean "
                    + "swear agree read see saw asked ask wish");

    private OwnDoing() {}

    /** Whether the last person named before the index is the speaker, who does something. */
    public static boolean endsAt(WordStream words, int index) {
        for (int at = index - 1; at >= index - REACH && !words.wall(at + 1); at--) {
            String word = words.text(at);
            boolean itIs = word.equals("it") && words.text(at + 1).equals("is");
            if (itIs || OTHERS.contains(word)) {
                return false;
            }
            if (SPEAKER.contains(word)) {
                return !TELLING.contains(words.text(at + 1)) && !TELLING.contains(words.text(at + 2));
            }
        }
        return false;
    }
}
