package org.misecue.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.misecue.narration.Cue;

/** The words of a narration in new cues, their times spread evenly inside the old ones: verdicts must hold. */
final class Recut {

    /** How long the last cue is taken to be. */
    private static final double LAST_CUE = 15;

    private record At(double second, String word) {}

    private Recut() {}

    static EpisodeCase of(EpisodeCase one, int wordsPerCue) {
        List<At> words = words(one.cues());
        StringBuilder text = new StringBuilder();
        for (int from = 0; from < words.size(); from += wordsPerCue) {
            List<At> cue = words.subList(from, Math.min(words.size(), from + wordsPerCue));
            int second = (int) cue.get(0).second();
            text.append(String.format(
                    Locale.ROOT,
                    "[%d:%02d] %s%n",
                    second / 60,
                    second % 60,
                    String.join(" ", cue.stream().map(At::word).toList())));
        }
        return one.withNarration(text.toString());
    }

    private static List<At> words(List<Cue> cues) {
        List<At> all = new ArrayList<>();
        for (int c = 0; c < cues.size(); c++) {
            double start = second(cues.get(c));
            double end = c + 1 < cues.size() ? second(cues.get(c + 1)) : start + LAST_CUE;
            String[] words = cues.get(c).text().strip().split("\\s+");
            for (int w = 0; w < words.length; w++) {
                all.add(new At(start + (end - start) * w / words.length, words[w]));
            }
        }
        return all;
    }

    private static double second(Cue cue) {
        return cue.start().toMillis() / 1000.0;
    }
}
