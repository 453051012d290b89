package org.misecue.claims;

import java.util.regex.Pattern;
import org.misecue.spoken.WordStream;

/** What is said right behind a phrase: exceptions, other places, a retreat, or the yes of an answer. */
final class Afterwords {

    private static final Pattern EXCEPT = Pattern.compile(
            "(?:too |as well |then |anyway )*(?:apart from|except|bar the|but for|if you|if i|if we|if it|unless|without|as long"
                    + " as|provided|providing|depending|once you|until|when you use|when you swap|if only|for the most part|ish)\\b.*");
    private static final Pattern ELSEWHERE = Pattern.compile(
            ".*\\b(?:on the channel|on my channel|in the book|in my book|linked|link below|next week|next time|last week|last"
                    + " time|last month|last year|once and|the other day|on the blog|in the shops?|in the supermarket)\\b.*");
    private static final Pattern TAKEN_BACK = Pattern.compile(
            "(?:\\w+ ){0,3}?(?:(?:well|oh|um|er|actually|hang on|wait) )*+no (?:sorry|wait|hang|it|it's|they|they're|that|i|i'm|"
                    + "not|actually|tell|hold|let)\\b.*|(?:\\w+ ){0,2}?(?:sorry|actually|wait|scratch that|i tell a lie|i mean)"
                    + " (?:\\w+ )?(?:isn't|is not|it's not|it is not|aren't|they're not|not|no)\\b.*"
                    + "|(?:it|they) (?:isn't|aren't)\\b.*|or (?:not|is it)\\b.*");
    private static final Pattern YES = Pattern.compile(
            "(?:(?!no\\b|not\\b|isn't\\b|nope\\b)[\\w']+ ){0,5}?(?:yes|yep|yeah|it is|they are|of course|absolutely|course it is|certainly|sure)\\b.*");

    private static final int REACH = 9;

    private final WordStream words;

    Afterwords(WordStream words) {
        this.words = words;
    }

    /** "…, no sorry, it isn't". */
    boolean takeBack(int end) {
        return TAKEN_BACK.matcher(words.normal(end, end + REACH)).matches();
    }

    /** "… apart from the glaze". */
    boolean except(int end) {
        return EXCEPT.matcher(inSentence(end)).matches();
    }

    /** "… on the channel last week". */
    boolean pointElsewhere(int end) {
        return ELSEWHERE.matcher(inSentence(end)).matches();
    }

    /** "… yes it is". */
    boolean affirm(int end) {
        return YES.matcher(words.normal(end, end + REACH)).matches();
    }

    private String inSentence(int from) {
        int at = from;
        while (at < from + REACH && at < words.size() && !words.wall(at)) {
            at++;
        }
        return words.normal(from, at);
    }
}
