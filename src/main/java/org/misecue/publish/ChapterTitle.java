package org.misecue.publish;

import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A short title from a step: what is done, without how long, how hot and until when. */
final class ChapterTitle {

    /** About what a player shows beside the time line. */
    static final int LONGEST = 50;

    private static final int SHORTEST = 8;

    /** "In a large bowl, ", "Meanwhile, ": where and when, before what. */
    private static final Pattern LEAD_IN = Pattern.compile(
            "(?i)^(in|into|using|with|once|when|while|meanwhile|next|then|finally|first|after|as soon as|for)\\b[^,]*,\\s+");

    private static final Pattern TAIL = Pattern.compile(
            "\\s+(until|till|then|so that|making sure)\\b|\\s+for (about |around |another )?[\\d½¼¾]|[;:(]|\\s[–—]\\s");

    /** Where a title may end, the best kind of place first. */
    private static final List<Pattern> JOINTS = List.of(
            Pattern.compile(",\\s+|\\s+and\\s+"), Pattern.compile("\\s+(with|in|into|over|onto|to|on|from)\\s+"));

    private ChapterTitle() {}

    static String of(String step) {
        String sentence = Sentences.first(SafeText.line(step));
        String title = withoutEnd(shortened(withoutTail(withoutLeadIn(sentence))));
        return title.isEmpty() ? "Next step" : title.substring(0, 1).toUpperCase(Locale.UK) + title.substring(1);
    }

    private static String withoutLeadIn(String sentence) {
        String rest = LEAD_IN.matcher(sentence).replaceFirst("");
        return rest.length() >= SHORTEST ? rest : sentence;
    }

    private static String withoutTail(String sentence) {
        Matcher tail = TAIL.matcher(sentence);
        while (tail.find()) {
            if (tail.start() >= SHORTEST) {
                return sentence.substring(0, tail.start());
            }
        }
        return sentence;
    }

    private static String shortened(String title) {
        if (title.length() <= LONGEST) {
            return title;
        }
        for (Pattern joint : JOINTS) {
            int cut = joint.matcher(title)
                    .results()
                    .mapToInt(MatchResult::start)
                    .filter(at -> at <= LONGEST)
                    .max()
                    .orElse(0);
            if (cut >= 2 * SHORTEST) {
                return title.substring(0, cut);
            }
        }
        int space = title.lastIndexOf(' ', LONGEST - 1);
        return title.substring(0, space >= SHORTEST ? space : wholeCharacters(title)) + "…";
    }

    /** Half as many as fit, so that no character of two units is cut. */
    private static int wholeCharacters(String title) {
        return title.offsetByCodePoints(0, LONGEST / 2 - 1);
    }

    private static String withoutEnd(String title) {
        return title.replaceFirst("[\\s.,;:!]+$", "");
    }
}
