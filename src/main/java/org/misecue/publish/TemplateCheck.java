package org.misecue.publish;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;
import org.misecue.notice.Place;

/**
 * Reads the tags of a template before it is used: only names, sections and remarks are allowed, each name must be known
 * where it stands, and each section must end.
 */
final class TemplateCheck {

    /** What may be asked of an item in a list. */
    private static final List<String> PLACES = List.of("-first", "-last", "-index");

    /** The one text that may go into a page as it is: it is made so that nothing in it can end its element. */
    private static final String RAW = "json-ld";

    private static final Pattern TAG =
            Pattern.compile("\\{\\{(\\{?)([#^/!>&=<$]?)\\s*([^{}]*?)\\s*(}}}?|$)", Pattern.DOTALL);

    private record Open(String name, TemplateNames names, int line) {}

    private final String file;
    private final String text;
    private final Deque<Open> open = new ArrayDeque<>();

    private TemplateCheck(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /** @throws BadInput with the line of the first fault */
    static void check(String file, String text) {
        new TemplateCheck(file, text).check();
    }

    private void check() {
        open.push(new Open("", TemplateNames.ALL, 0));
        int at = text.indexOf("{{");
        while (at >= 0) {
            Matcher tag = TAG.matcher(text).region(at, text.length());
            if (!tag.lookingAt() || tag.group(4).isEmpty()) {
                throw wrong(line(at), "“{{” is not closed; write “}}” behind the name.");
            }
            take(tag, line(at));
            at = text.indexOf("{{", tag.end());
        }
        if (open.size() > 1) {
            Open last = open.element();
            throw wrong(
                    last.line(),
                    "the section “%s” does not end; write “{{/%1$s}}” where it does.".formatted(last.name()));
        }
    }

    private void take(Matcher tag, int line) {
        String name = tag.group(3);
        boolean raw = !tag.group(1).isEmpty();
        if (raw != tag.group(4).equals("}}}") || raw && !tag.group(2).isEmpty()) {
            throw wrong(line, "the braces before and behind “%s” do not match.".formatted(name));
        }
        switch (tag.group(2)) {
            case "" -> {
                find(name, line);
                if (raw && !name.equals(RAW)) {
                    throw wrong(line, "only {{{json-ld}}} has three braces; write “{{%s}}”.".formatted(name));
                }
            }
            case "#", "^" -> open.push(new Open(name, find(name, line), line));
            case "/" -> close(name, line);
            case "!" -> {
                // a remark
            }
            default ->
                throw wrong(
                        line,
                        "“{{%s” is not for these templates, which only name texts, sections and remarks; take it out."
                                .formatted(tag.group(2)));
        }
    }

    private void close(String name, int line) {
        String expected = open.element().name();
        if (!expected.equals(name)) {
            throw wrong(
                    line,
                    expected.isEmpty()
                            ? "“{{/%s}}” ends a section that has not begun; take it out.".formatted(name)
                            : "“{{/%s}}” ends the section “%s”; write “{{/%2$s}}”.".formatted(name, expected));
        }
        open.pop();
    }

    /** A name of the section, or of one around it. */
    private TemplateNames find(String name, int line) {
        if (PLACES.contains(name) && open.size() > 1) {
            return TemplateNames.ALL;
        }
        for (Open section : open) {
            Optional<TemplateNames> found = section.names().find(name);
            if (found.isPresent()) {
                return found.get().inner().isEmpty() ? section.names() : found.get();
            }
        }
        List<String> known = new ArrayList<>();
        open.forEach(section -> known.addAll(section.names().known()));
        throw wrong(line, "“%s” is not a name for templates here; %s".formatted(name, NearestWord.remedy(name, known)));
    }

    private int line(int at) {
        return 1
                + (int) text.substring(0, at)
                        .chars()
                        .filter(sign -> sign == '\n')
                        .count();
    }

    private BadInput wrong(int line, String sentence) {
        return new BadInput(Place.of(file, line), sentence);
    }
}
