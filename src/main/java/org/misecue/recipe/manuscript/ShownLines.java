package org.misecue.recipe.manuscript;

import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** Walks HTML and writes down a line for each block that shows text. */
final class ShownLines {

    private static final Set<String> SKIPPED = Set.of(
            "script",
            "style",
            "nav",
            "footer",
            "aside",
            "form",
            "noscript",
            "template",
            "svg",
            "button",
            "iframe",
            "head");
    private static final Set<String> INLINE = Set.of(
            "a", "abbr", "b", "cite", "code", "del", "em", "font", "i", "ins", "label", "mark", "q", "s", "small",
            "span", "strong", "sub", "sup", "time", "u", "br", "img", "input", "wbr", "data", "meta", "link");
    /** Marks a break that ends a line but no paragraph. */
    static final String SOFT = "soft";

    private static final int BOLD_LEVEL = 5;
    /** A page is as deep as a page; deeper nesting is an attack. */
    private static final int DEEPEST = 400;

    private final List<Line> lines;
    private final StringBuilder loose = new StringBuilder();
    private int looseLine;
    private boolean soft;

    ShownLines(List<Line> lines) {
        this.lines = lines;
    }

    void walk(Element element) {
        walk(element, 0);
        flush();
    }

    private void walk(Element element, int depth) {
        if (depth > DEEPEST || SKIPPED.contains(element.normalName())) {
            return;
        }
        for (Node child : element.childNodes()) {
            if (child instanceof TextNode text) {
                say(text.text(), lineOf(text));
            } else if (child instanceof Element inner) {
                if (inner.normalName().equals("br")) {
                    flush();
                    soft = inner.hasClass(SOFT);
                } else if (INLINE.contains(inner.normalName()) && !hasBlock(inner)) {
                    say(inner.text(), lineOf(inner));
                } else {
                    flush();
                    block(inner, depth);
                    flush();
                }
            }
        }
    }

    private void block(Element element, int depth) {
        String name = element.normalName();
        if (SKIPPED.contains(name) || Clutter.is(element)) {
            return;
        }
        if (isHeading(name)) {
            addHeading(element, name.charAt(1) - '0');
        } else if (name.equals("li") && !hasBlock(element)) {
            addItem(element);
        } else if (name.equals("table") && !isLayout(element)) {
            addTable(element);
        } else if (name.equals("p") && isBold(element)) {
            addHeading(element, BOLD_LEVEL);
        } else {
            int before = lines.size();
            walk(element, depth + 1);
            flush();
            markAsItem(element, before);
        }
    }

    /** Whether the table only sets columns of the page side by side: its cells hold lists and paragraphs. */
    private static boolean isLayout(Element table) {
        return table.select("td, th").stream()
                .anyMatch(cell -> cell.select("p:not(:empty), li, h1, h2, h3, h4, h5, h6, tr, br")
                                .size()
                        > 1);
    }

    private void addTable(Element table) {
        List<TableRows.Row> rows = table.select("tr").stream()
                .map(row -> new TableRows.Row(lineOf(row), row.select("td, th").eachText()))
                .toList();
        lines.addAll(TableRows.lines(rows));
    }

    private void addHeading(Element element, int level) {
        String text = element.text().strip();
        if (!text.isEmpty()) {
            lines.add(Line.heading(lineOf(element), level, text));
        }
    }

    private void addItem(Element element) {
        Element parent = element.parent();
        boolean numbered = parent != null && parent.normalName().equals("ol");
        String text = element.text().strip();
        if (!text.isEmpty()) {
            lines.add(numbered ? Line.numbered(lineOf(element), text) : Line.item(lineOf(element), text));
        }
    }

    /** A list item with paragraphs inside is one item. */
    private void markAsItem(Element element, int before) {
        if (element.normalName().equals("li")
                && lines.size() > before
                && lines.get(before).is(Line.Kind.TEXT)) {
            Element parent = element.parent();
            Line first = lines.get(before);
            boolean numbered = parent != null && parent.normalName().equals("ol");
            Line item =
                    numbered ? Line.numbered(first.number(), first.text()) : Line.item(first.number(), first.text());
            while (lines.size() > before + 1 && lines.get(before + 1).is(Line.Kind.TEXT)) {
                item = item.with(lines.remove(before + 1).text());
            }
            lines.set(before, item);
        }
    }

    private void say(String text, int line) {
        if (loose.isEmpty()) {
            looseLine = line;
        }
        if (!text.isEmpty()) {
            loose.append(text);
        }
    }

    private void flush() {
        String text = loose.toString().strip();
        loose.setLength(0);
        if (!text.isEmpty()) {
            add(Marks.line(looseLine, text, !soft));
        }
        soft = false;
    }

    private void add(Line line) {
        if (!line.text().isBlank()) {
            lines.add(line);
        }
    }

    private static boolean hasBlock(Element element) {
        boolean onlyText = element.childNodes().stream().noneMatch(Element.class::isInstance);
        return !onlyText
                && element.stream()
                        .skip(1)
                        .anyMatch(inner -> !INLINE.contains(inner.normalName())
                                || inner.normalName().equals("br"));
    }

    private static boolean isHeading(String name) {
        return name.length() == 2 && name.charAt(0) == 'h' && name.charAt(1) >= '1' && name.charAt(1) <= '6';
    }

    private static boolean isBold(Element paragraph) {
        if (paragraph.childNodeSize() != 1 || !(paragraph.childNode(0) instanceof Element only)) {
            return false;
        }
        String name = only.normalName();
        return name.equals("b") || name.equals("strong");
    }

    static int lineOf(Node node) {
        return Math.max(node.sourceRange().start().lineNumber(), 0);
    }
}
