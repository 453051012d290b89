package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Plain text as it is typed or pasted from a mail: bullets or none, lines broken anywhere. */
final class PlainTextManuscript implements ManuscriptReader {

    private static final Pattern UNDERLINE = Pattern.compile("\\h*[-=_*~]{3,}\\h*");
    private static final Pattern QUOTED = Pattern.compile("^(?:>\\h?)++");
    private static final Pattern MAIL_HEAD =
            Pattern.compile("^(?:From|To|Cc|Bcc|Date|Sent|Reply-To):\\h.*|^-{2,}.*(?:[Ff]orwarded|[Oo]riginal).*");
    private static final Pattern SUBJECT =
            Pattern.compile("^Subject:\\h*(?:(?:Re|Fwd?|AW):\\h*)*+(.*)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern CLOSING = Pattern.compile(
            "(?:(?:lots of )?love|cheers|(?:(?:kind|best|warm) )?(?:regards|wishes)|all the best|many thanks|thanks|yours|best|x{1,4}|enjoy)[,!.]?"
                    + "|sent from my .*",
            Pattern.CASE_INSENSITIVE);
    /** A name, an address and a telephone number follow a closing, and no more. */
    private static final int LONGEST_SIGNATURE = 6;

    private static final Pattern SIGNATURE = Pattern.compile("^--\\h?$");
    /** Shorter lines end where their writer ended them. */
    private static final int SHORTEST_BROKEN_LINE = 60;

    @Override
    public boolean takes(String type) {
        return type.startsWith("text/");
    }

    @Override
    public Manuscript read(Document document) {
        return new Manuscript("", lines(document.recipeText()));
    }

    static List<Line> lines(String text) {
        List<Line> lines = new ArrayList<>();
        boolean gap = true;
        int number = 0;
        String before = "";
        List<String> all = text.lines().toList();
        for (String raw : all) {
            number++;
            String line = QUOTED.matcher(raw).replaceFirst("");
            if (SIGNATURE.matcher(line).matches() || gap && closes(line, all.size() - number)) {
                break;
            }
            if (line.isBlank()) {
                gap = true;
                continue;
            }
            if (!MAIL_HEAD.matcher(line).matches()) {
                add(lines, line, number, gap, before);
            }
            before = line;
            gap = false;
        }
        return lines;
    }

    private static boolean closes(String line, int following) {
        return following <= LONGEST_SIGNATURE && CLOSING.matcher(line.strip()).matches();
    }

    private static void add(List<Line> lines, String raw, int number, boolean gap, String before) {
        int last = lines.size() - 1;
        Matcher subject = SUBJECT.matcher(raw);
        if (subject.matches()) {
            lines.add(Line.heading(number, 1, subject.group(1).strip()));
        } else if (UNDERLINE.matcher(raw).matches()) {
            if (!gap && last >= 0 && lines.get(last).is(Line.Kind.TEXT)) {
                Line heading = lines.get(last);
                lines.set(last, Line.heading(heading.number(), raw.contains("=") ? 1 : 2, heading.text()));
            }
        } else {
            Line line = Marks.line(number, raw, gap);
            if (!gap && last >= 0 && line.is(Line.Kind.TEXT) && continues(lines.get(last), raw, before)) {
                lines.set(last, lines.get(last).with(line.text()));
            } else {
                lines.add(line);
            }
        }
    }

    /** Whether this line is the rest of one that was broken. */
    private static boolean continues(Line last, String raw, String before) {
        if (last.is(Line.Kind.HEADING)) {
            return false;
        }
        if (last.is(Line.Kind.TEXT)) {
            return before.length() >= SHORTEST_BROKEN_LINE && Character.isLowerCase(raw.codePointAt(0));
        }
        boolean indented = raw.startsWith("  ") || raw.startsWith("\t");
        return last.text().isEmpty() || indented || before.length() >= SHORTEST_BROKEN_LINE;
    }
}
