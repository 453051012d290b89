package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text whose lines begin with a time in brackets, {@code [m:ss]} or {@code [h:mm:ss]}. Lines without one go on with the
 * cue above. A cue ends where the next one begins; the last lasts as long as its words take at 150 words a minute, and
 * not less than two seconds.
 */
final class StampedText implements CueFormat {

    private static final Pattern STAMPED_LINE = Pattern.compile("\\s*\\[\\s*(\\d[\\d:.,]*)\\s*\\](.*)", Pattern.DOTALL);

    private static final Pattern SOMEWHERE = Pattern.compile("(?m)^\\s*\\[\\s*\\d+(?::\\d+)++([.,]\\d+)?\\s*\\]");

    @Override
    public String name() {
        return "text with times in brackets";
    }

    @Override
    public List<String> extensions() {
        return List.of(".txt");
    }

    @Override
    public String example() {
        return "\"[1:05] and now the flour\" (minutes, then seconds from 00 to 59)";
    }

    @Override
    public boolean recognises(String text) {
        return SOMEWHERE.matcher(text).find();
    }

    @Override
    public void read(String text, CueSheet sheet) {
        Open open = new Open(0, Optional.empty());
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            Matcher stamped = STAMPED_LINE.matcher(lines.get(i));
            if (!stamped.matches()) {
                open.words.addAll(SpokenWord.of(lines.get(i)));
                continue;
            }
            open.close(sheet);
            open = new Open(i + 1, Clock.parse(stamped.group(1)));
            open.words.addAll(SpokenWord.of(stamped.group(2)));
            if (open.start.isEmpty()) {
                sheet.note(
                        i + 1,
                        "expected a time such as [1:05] but found [" + stamped.group(1) + "]; the cue was left out");
            }
        }
        open.close(sheet);
    }

    /** The cue that is being read. */
    private static final class Open {
        final int line;
        final Optional<Duration> start;
        final List<SpokenWord> words = new ArrayList<>();

        Open(int line, Optional<Duration> start) {
            this.line = line;
            this.start = start;
        }

        void close(CueSheet sheet) {
            if (start.isPresent()) {
                sheet.add(new CueSheet.Draft(line, start.get(), Optional.empty(), Optional.empty(), words));
            } else if (line == 0 && !words.isEmpty()) {
                sheet.note(1, "the text before the first time was left out; put a time such as [0:00] before it");
            }
        }
    }
}
