package org.misecue.narration;

import java.util.List;
import java.util.Optional;

/** WebVTT: {@link WebVttFile} finds the cues, {@link WebVttCueText} takes the tags off. */
final class WebVttReader implements CueFormat {

    @Override
    public String name() {
        return "WebVTT";
    }

    @Override
    public List<String> extensions() {
        return List.of(".vtt");
    }

    @Override
    public String example() {
        return "\"00:01:05.000 --> 00:01:09.500\" with its text in the next line, below a first line WEBVTT";
    }

    @Override
    public boolean recognises(String text) {
        return WebVttFile.hasSignature(text);
    }

    @Override
    public void read(String text, CueSheet sheet) {
        WebVttFile file = WebVttFile.parse(text);
        for (int line : file.brokenTimes()) {
            sheet.note(line, "expected times such as 00:01:05.000 --> 00:01:09.500; the cue was left out");
        }
        for (WebVttFile.RawCue cue : file.cues()) {
            WebVttCueText cueText = WebVttCueText.parse(cue.text());
            sheet.add(new CueSheet.Draft(
                    cue.line(), cue.start(), Optional.of(cue.end()), cueText.speaker(), cueText.words()));
        }
    }
}
