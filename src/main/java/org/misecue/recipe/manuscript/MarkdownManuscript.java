package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Markdown after the CommonMark specification; source spans give the line numbers. */
final class MarkdownManuscript implements ManuscriptReader {

    /** A paragraph that is bold as a whole stands for a small heading. */
    private static final int BOLD_LEVEL = 5;

    /** Lists within lists within quotes; deeper ones are read as text. */
    private static final int DEEPEST = 100;

    /** Settings for a program that makes pages, between two rules at the very beginning. */
    private static final Pattern FRONT =
            Pattern.compile("---\\h*\\R(?:(?!---\\h*(?:\\R|$))(?:[\\w-]+:|[ \\t-]).*\\R)++---\\h*(?:\\R|$)");

    private static final Pattern TITLE = Pattern.compile("(?m)^title:\\h*[\"']?(.*?)[\"']?\\h*$");

    @Override
    public boolean takes(String type) {
        return type.contains("markdown");
    }

    @Override
    public Manuscript read(Document document) {
        String text = document.recipeText();
        Matcher front = FRONT.matcher(text);
        String title = "";
        if (front.lookingAt()) {
            Matcher named = TITLE.matcher(front.group());
            title = named.find() ? named.group(1) : "";
            // Empty lines in its place keep the numbers of the lines behind it.
            text = front.group().replaceAll(".", "") + text.substring(front.end());
        }
        Node root = Parser.builder()
                .includeSourceSpans(IncludeSourceSpans.BLOCKS)
                .maxOpenBlockParsers(DEEPEST)
                .build()
                .parse(text);
        Blocks blocks = new Blocks();
        root.accept(blocks);
        return new Manuscript(title, blocks.lines);
    }

    private static int lineOf(Node node) {
        return node.getSourceSpans().isEmpty()
                ? 0
                : node.getSourceSpans().get(0).getLineIndex() + 1;
    }

    private static final class Blocks extends AbstractVisitor {

        /** A few words without figures above a list of their own name a part. */
        private static final Pattern PART = Pattern.compile("\\p{L}[^\\d½¼¾⅓⅔.,]{0,40}");

        private final List<Line> lines = new ArrayList<>();

        @Override
        public void visit(Heading heading) {
            lines.add(Line.heading(lineOf(heading), heading.getLevel(), Inlines.of(heading)));
        }

        @Override
        public void visit(Paragraph paragraph) {
            String text = Inlines.of(paragraph);
            if (paragraph.getParent() instanceof ListItem item) {
                addItem(paragraph, item, text);
            } else if (isBold(paragraph) && !text.contains("\n")) {
                lines.add(Line.heading(lineOf(paragraph), BOLD_LEVEL, text));
            } else {
                addLines(lineOf(paragraph), text, opensBold(paragraph));
            }
        }

        @Override
        public void visit(BlockQuote quote) {
            visitChildren(quote);
        }

        @Override
        public void visit(HtmlBlock html) {
            int before = lineOf(html) - 1;
            WebPageManuscript.shown(WebPageManuscript.parsed(html.getLiteral()).body()).lines().stream()
                    .map(line -> new Line(
                            before + Math.max(line.number(), 1), line.kind(), line.level(), line.text(), line.gap()))
                    .forEach(lines::add);
        }

        @Override
        public void visit(IndentedCodeBlock code) {
            addCode(lineOf(code), code.getLiteral());
        }

        @Override
        public void visit(FencedCodeBlock code) {
            addCode(lineOf(code) + 1, code.getLiteral());
        }

        private void addCode(int first, String literal) {
            int number = first;
            for (String each : literal.split("\n", -1)) {
                addText(number, each, number == first);
                number++;
            }
        }

        private void addLines(int first, String text, boolean headed) {
            List<String> each = List.of(text.split("\n", -1));
            List<TableRows.Row> rows = PipeTable.rows(first, each);
            if (!rows.isEmpty()) {
                lines.addAll(TableRows.lines(rows));
                return;
            }
            for (int at = 0; at < each.size(); at++) {
                if (at == 0 && headed) {
                    lines.add(Line.heading(first, BOLD_LEVEL, each.get(0)));
                } else {
                    addText(first + at, each.get(at), at == 0);
                }
            }
        }

        private void addItem(Paragraph paragraph, ListItem item, String text) {
            String oneLine = Marks.unboxed(text.replace('\n', ' '));
            if (item.getFirstChild() != paragraph && !lines.isEmpty()) {
                lines.set(lines.size() - 1, lines.get(lines.size() - 1).with(oneLine));
                return;
            }
            if (item.getLastChild() instanceof ListBlock
                    && PART.matcher(oneLine).matches()) {
                lines.add(Line.heading(lineOf(item), BOLD_LEVEL, oneLine));
                return;
            }
            boolean numbered = item.getParent() instanceof OrderedList;
            lines.add(numbered ? Line.numbered(lineOf(item), oneLine) : Line.item(lineOf(item), oneLine));
        }

        private void addText(int number, String text, boolean gap) {
            Line line = Marks.line(number, text, gap);
            if (!line.text().isBlank()) {
                lines.add(line);
            }
        }

        /** Whether the first line is bold and more lines follow. */
        private static boolean opensBold(Paragraph paragraph) {
            Node first = paragraph.getFirstChild();
            return first instanceof StrongEmphasis
                    && (first.getNext() instanceof SoftLineBreak || first.getNext() instanceof HardLineBreak);
        }

        private static boolean isBold(Paragraph paragraph) {
            Node first = paragraph.getFirstChild();
            return first instanceof StrongEmphasis && first == paragraph.getLastChild();
        }
    }

    /** The words of a block without emphasis, links and other marks. */
    private static final class Inlines extends AbstractVisitor {

        /** Emphasis from its opening tag to its closing one; a tag alone may be part of a name. */
        private static final Pattern EMPHASIS = Pattern.compile(
                "(?is)<(b|i|u|em|strong|span|small|mark|sub|sup|a|font)(?:\\s[^<>]*)?>([^<]{0,300})</\\1>");

        private final StringBuilder words = new StringBuilder();

        static String of(Node block) {
            Inlines inlines = new Inlines();
            inlines.visitChildren(block);
            return EMPHASIS.matcher(inlines.words).replaceAll("$2").strip();
        }

        @Override
        public void visit(Text text) {
            words.append(text.getLiteral());
        }

        @Override
        public void visit(Code code) {
            words.append(code.getLiteral());
        }

        @Override
        public void visit(HtmlInline html) {
            // A recipe named <script> is named so: only line breaks and paired emphasis are marks here.
            words.append(html.getLiteral().startsWith("<br") ? "\n" : html.getLiteral());
        }

        @Override
        public void visit(SoftLineBreak lineBreak) {
            words.append('\n');
        }

        @Override
        public void visit(HardLineBreak lineBreak) {
            words.append('\n');
        }
    }
}
