package org.misecue.narration;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.parser.Parser;

/**
 * SubRip as it is met in practice: numbers may be missing, the comma may be a point, hours may be left out, there may be
 * markup in the text and blank lines inside it. Only the line with the arrow marks a cue.
 */
final class SubRipReader implements CueFormat {

    private static final String TIME = "((?:\\d{1,5}:)?\\d{1,2}:\\d{1,2}(?:[.,:]\\d{1,3})?)";
    private static final Pattern TIMING = Pattern.compile("\\s*" + TIME + "\\s*-{1,2}>\\s*" + TIME + "(?:\\s.*)?");
    private static final Pattern SOMEWHERE =
            Pattern.compile("(?m)^[ \\t]*(?:\\d{1,5}:)?\\d{1,2}:\\d{1,2}([.,:]\\d{1,3})?[ \\t]*-{1,2}>");
    private static final Pattern NUMBER = Pattern.compile("\\s*\\d{1,9}\\s*");
    private static final Pattern MARKUP = Pattern.compile("</?[a-zA-Z][^<>]*>|\\{\\\\[^{}]*\\}");
    private static final Pattern ENTITY = Pattern.compile("&#?\\w{1,31};");

    @Override
    public String name() {
        return "SubRip";
    }

    @Override
    public List<String> extensions() {
        return List.of(".srt");
    }

    @Override
    public String example() {
        return "\"00:01:05,000 --> 00:01:09,500\" with its text in the next line";
    }

    @Override
    public boolean recognises(String text) {
        return SOMEWHERE.matcher(text).find();
    }

    @Override
    public void read(String text, CueSheet sheet) {
        List<String> lines = text.lines().toList();
        int timing = nextTiming(lines, 0);
        int number = 0;
        while (timing < lines.size()) {
            number = numberAbove(lines, timing, number).orElse(number + 1);
            int next = nextTiming(lines, timing + 1);
            int end = next < lines.size() && numberAbove(lines, next, number).isPresent() ? next - 1 : next;
            readCue(lines, timing, end, sheet);
            timing = next;
        }
    }

    private static int nextTiming(List<String> lines, int from) {
        int line = from;
        while (line < lines.size() && !isTiming(lines.get(line))) {
            line++;
        }
        return line;
    }

    private static boolean isTiming(String line) {
        return line.contains("-->") || TIMING.matcher(line).matches();
    }

    /**
     * A cue's number stands directly above its times. A line of digits there may instead be the last line of the cue
     * before ("350"), so it must follow a blank line or count on from the number before.
     */
    private static Optional<Integer> numberAbove(List<String> lines, int timing, int before) {
        if (timing == 0 || !NUMBER.matcher(lines.get(timing - 1)).matches()) {
            return Optional.empty();
        }
        int number = Integer.parseInt(lines.get(timing - 1).strip());
        boolean afterBlank = timing == 1 || lines.get(timing - 2).isBlank();
        return afterBlank || number == before + 1 ? Optional.of(number) : Optional.empty();
    }

    private static void readCue(List<String> lines, int timing, int end, CueSheet sheet) {
        Matcher times = TIMING.matcher(lines.get(timing));
        Optional<Duration> start = times.matches() ? time(times.group(1)) : Optional.empty();
        Optional<Duration> until = start.isPresent() ? time(times.group(2)) : Optional.empty();
        if (until.isEmpty()) {
            sheet.note(timing + 1, "expected times such as 00:01:05,000 --> 00:01:09,500; the cue was left out");
            return;
        }
        String text = String.join(" ", lines.subList(timing + 1, Math.max(timing + 1, end)));
        sheet.add(new CueSheet.Draft(
                timing + 1, start.orElseThrow(), until, Optional.empty(), SpokenWord.of(withoutMarkup(text))));
    }

    /** The fraction's separator may be a comma, a point or, from some hands, a colon before three digits. */
    private static Optional<Duration> time(String text) {
        return Clock.parse(text.replaceFirst("(:\\d{1,2}:\\d{1,2}):(\\d{3})$", "$1.$2"));
    }

    static String withoutMarkup(String text) {
        String plain = MARKUP.matcher(text).replaceAll("");
        return plain.indexOf('&') < 0
                ? plain
                : ENTITY.matcher(plain)
                        .replaceAll(entity -> Matcher.quoteReplacement(Parser.unescapeEntities(entity.group(), false)));
    }
}
