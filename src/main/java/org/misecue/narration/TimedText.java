package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text that stood somewhere else than in a narration file, with its times; where none is known, it ends when the next one
 * begins.
 *
 * @param markup whether its tags are those of WebVTT, and not of SubRip
 */
public record TimedText(Duration start, Optional<Duration> end, String text, Markup markup) {

    /** Whose tags there may be in a text. */
    public enum Markup {
        SUBRIP,
        WEBVTT
    }

    /**
     * The texts as a narration; what ends before 0:00 is left out.
     *
     * @param source what they are called in results and messages
     * @return empty where there are no words in them
     */
    public static Optional<Narration> narration(List<TimedText> texts, String source) {
        CueSheet sheet = new CueSheet(source);
        List<CueSheet.Draft> drafts = new ArrayList<>();
        for (TimedText text : texts) {
            boolean before =
                    text.start.isNegative() && text.end.orElse(text.start).compareTo(Duration.ZERO) <= 0;
            if (!before) {
                drafts.add(text.draft());
            }
        }
        drafts.forEach(sheet::add);
        return drafts.stream().allMatch(draft -> draft.words().isEmpty())
                ? Optional.empty()
                : Optional.of(sheet.narration(new WebVttReader()));
    }

    private CueSheet.Draft draft() {
        Duration begins = start.isNegative() ? Duration.ZERO : start;
        if (markup == Markup.WEBVTT) {
            WebVttCueText cue = WebVttCueText.parse(text);
            return new CueSheet.Draft(0, begins, end, cue.speaker(), cue.words());
        }
        return new CueSheet.Draft(0, begins, end, Optional.empty(), SpokenWord.of(SubRipReader.withoutMarkup(text)));
    }
}
