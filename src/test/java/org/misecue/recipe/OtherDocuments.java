package org.misecue.recipe;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** The oat slice as OpenDocument, RTF and PDF. */
final class OtherDocuments {

    private OtherDocuments() {}

    static byte[] odt(boolean tables) throws IOException {
        String body = "<text:h text:outline-level=\"1\">" + OatSlice.TITLE + "</text:h>" + p(OatSlice.MAKES)
                + "<text:h text:outline-level=\"2\">Ingredients</text:h>"
                + "<text:h text:outline-level=\"3\">For the base</text:h>" + odtList(OatSlice.BASE, tables)
                + "<text:h text:outline-level=\"3\">For the icing</text:h>" + odtList(OatSlice.ICING, tables)
                + "<text:h text:outline-level=\"2\">Method</text:h>" + odtList(OatSlice.STEPS, false);
        return FuzzSeeds.odt("<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content"
                + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
                + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:text>" + body
                + "</office:text></office:body></office:document-content>");
    }

    private static String odtList(List<String> lines, boolean table) {
        if (!table) {
            return lines.stream()
                    .map(line -> "<text:list-item>" + p(line) + "</text:list-item>")
                    .collect(Collectors.joining("", "<text:list>", "</text:list>"));
        }
        return lines.stream()
                .map(OatSlice::cells)
                .map(cells ->
                        "<table:table-row><table:table-cell>" + p(cells[0]) + "</table:table-cell><table:table-cell>"
                                + p(cells[1]) + "</table:table-cell></table:table-row>")
                .collect(Collectors.joining("", "<table:table>", "</table:table>"));
    }

    private static String p(String text) {
        return "<text:p>" + text + "</text:p>";
    }

    static byte[] rtf(boolean tables) {
        StringBuilder text = new StringBuilder("{\\rtf1\\ansi\\deff0{\\fonttbl{\\f0 Serif;}}\n");
        for (String line : List.of(OatSlice.TITLE, OatSlice.MAKES, "Ingredients", "For the base:")) {
            text.append(par(line));
        }
        text.append(rtfList(OatSlice.BASE, tables)).append(par("For the icing:"));
        text.append(rtfList(OatSlice.ICING, tables)).append(par("Method"));
        for (int at = 0; at < OatSlice.STEPS.size(); at++) {
            text.append(par(at + 1 + ".\t" + OatSlice.STEPS.get(at)));
        }
        return (text + "}").getBytes(StandardCharsets.US_ASCII);
    }

    private static String rtfList(List<String> lines, boolean table) {
        return lines.stream()
                .map(line -> table
                        ? "\\trowd\\cellx2000\\cellx6000\\pard\\intbl " + escaped(OatSlice.cells(line)[0]) + "\\cell "
                                + escaped(OatSlice.cells(line)[1]) + "\\cell\\row\n"
                        : par("•\t" + line))
                .collect(Collectors.joining());
    }

    private static String par(String text) {
        return "\\pard " + escaped(text) + "\\par\n";
    }

    private static String escaped(String text) {
        return text.chars()
                .mapToObj(each -> each == '\t' ? "\\tab " : each < 128 ? "" + (char) each : "\\u" + each + "?")
                .collect(Collectors.joining());
    }

    /** One column, or ingredients left and method right; lines wrap as a word processor wraps them. */
    static byte[] pdf(boolean columns) throws IOException {
        List<String> list = new ArrayList<>(List.of("Ingredients", "For the base:"));
        OatSlice.BASE.forEach(line -> list.add("• " + line));
        list.add("For the icing:");
        OatSlice.ICING.forEach(line -> list.add("• " + line));
        List<String> method = new ArrayList<>(List.of("Method"));
        for (int at = 0; at < OatSlice.STEPS.size(); at++) {
            method.add(at + 1 + ". " + OatSlice.STEPS.get(at));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            try (PDPageContentStream page = new PDPageContentStream(document, document.getPage(0))) {
                write(page, 50, 740, 20, 70, List.of(OatSlice.TITLE));
                write(page, 50, 705, 11, 70, List.of(OatSlice.MAKES));
                write(page, 50, 660, 11, columns ? 34 : 84, list);
                write(page, columns ? 280 : 50, columns ? 660 : 480, 11, columns ? 46 : 84, method);
            }
            document.save(bytes);
        }
        return bytes.toByteArray();
    }

    private static void write(PDPageContentStream page, int x, int y, int size, int width, List<String> lines)
            throws IOException {
        int at = y;
        for (String line : lines) {
            for (String part : wrapped(line, width)) {
                page.beginText();
                page.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), size);
                page.newLineAtOffset(x, at);
                page.showText(part);
                page.endText();
                at -= 14;
            }
        }
    }

    static List<String> wrapped(String line, int width) {
        List<String> parts = new ArrayList<>();
        String rest = line;
        while (rest.length() > width) {
            int cut = rest.lastIndexOf(' ', width);
            parts.add(rest.substring(0, cut));
            rest = rest.substring(cut + 1);
        }
        parts.add(rest);
        return parts;
    }
}
