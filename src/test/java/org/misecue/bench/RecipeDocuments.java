package org.misecue.bench;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFStyle;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTStyle;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STNumberFormat;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STStyleType;

/** A recipe of usual length, twenty ingredient lines in four parts and ten steps, as each kind of document, saved as programs save it. */
final class RecipeDocuments {

    /** A paragraph: "#", "##" or "###" for a heading, "-" or "1." for an item, nothing for plain text. */
    private record Paragraph(String mark, String text) {

        static Paragraph of(String line) {
            return line.matches("(?:#+|-|\\d+\\.) .*")
                    ? new Paragraph(line.substring(0, line.indexOf(' ')), line.substring(line.indexOf(' ') + 1))
                    : new Paragraph("", line);
        }

        boolean heading() {
            return mark.startsWith("#");
        }
    }

    private static final String ODT_STYLES = Stream.of(
                    "Standard", "Text_20_body", "List", "Heading_20_1", "Heading_20_2", "Heading_20_3")
            .map(name -> "<style:style style:name=\"" + name + "\" style:family=\"paragraph\" style:class=\"text\"/>")
            .collect(Collectors.joining());

    private RecipeDocuments() {}

    static String markdown() throws IOException {
        try (InputStream in = resource("reading.md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static byte[] of(String kind) throws IOException {
        List<Paragraph> paragraphs = markdown()
                .lines()
                .filter(line -> !line.isBlank())
                .map(Paragraph::of)
                .toList();
        return switch (kind) {
            case "docx" -> docx(paragraphs);
            case "odt" -> odt(paragraphs);
            case "pdf" -> pdf(paragraphs);
            case "rtf" -> rtf(paragraphs).getBytes(StandardCharsets.US_ASCII);
            default -> page(paragraphs).getBytes(StandardCharsets.UTF_8);
        };
    }

    /** With styles for headings and automatic lists. */
    private static byte[] docx(List<Paragraph> paragraphs) throws IOException {
        try (XWPFDocument document = new XWPFDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            document.createStyles();
            document.createNumbering();
            for (int level = 1; level <= 3; level++) {
                CTStyle style = CTStyle.Factory.newInstance();
                style.setStyleId("Heading" + level);
                style.addNewName().setVal("heading " + level);
                style.setType(STStyleType.PARAGRAPH);
                document.getStyles().addStyle(new XWPFStyle(style));
            }
            BigInteger bullets = numbering(document, 0, STNumberFormat.BULLET, "•");
            BigInteger numbers = numbering(document, 1, STNumberFormat.DECIMAL, "%1.");
            for (Paragraph each : paragraphs) {
                XWPFParagraph paragraph = document.createParagraph();
                paragraph.createRun().setText(each.text);
                if (each.heading()) {
                    paragraph.setStyle("Heading" + each.mark.length());
                } else if (!each.mark.isEmpty()) {
                    paragraph.setNumID(each.mark.equals("-") ? bullets : numbers);
                }
            }
            document.write(bytes);
            return bytes.toByteArray();
        }
    }

    private static BigInteger numbering(XWPFDocument document, int id, STNumberFormat.Enum format, String mark) {
        CTAbstractNum list = CTAbstractNum.Factory.newInstance();
        list.setAbstractNumId(BigInteger.valueOf(id));
        var level = list.addNewLvl();
        level.setIlvl(BigInteger.ZERO);
        level.addNewStart().setVal(BigInteger.ONE);
        level.addNewNumFmt().setVal(format);
        level.addNewLvlText().setVal(mark);
        return document.getNumbering().addNum(document.getNumbering().addAbstractNum(new XWPFAbstractNum(list)));
    }

    /** With the files that a word processor puts beside the text: what it is, styles, settings. */
    private static byte[] odt(List<Paragraph> paragraphs) throws IOException {
        String body = paragraphs.stream().map(RecipeDocuments::odtParagraph).collect(Collectors.joining());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            entry(zip, "mimetype", "application/vnd.oasis.opendocument.text");
            entry(
                    zip,
                    "content.xml",
                    office("content", "<office:body><office:text>" + body + "</office:text></office:body>"));
            entry(zip, "styles.xml", office("styles", "<office:styles>" + ODT_STYLES + "</office:styles>"));
            entry(zip, "meta.xml", office("meta", "<office:meta><meta:generator>bench</meta:generator></office:meta>"));
            entry(zip, "settings.xml", office("settings", "<office:settings/>"));
        }
        return bytes.toByteArray();
    }

    private static String office(String part, String inner) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-" + part
                + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                + " xmlns:meta=\"urn:oasis:names:tc:opendocument:xmlns:meta:1.0\""
                + " xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\""
                + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\">" + inner + "</office:document-"
                + part
                + ">";
    }

    private static String odtParagraph(Paragraph each) {
        if (each.heading()) {
            return "<text:h text:style-name=\"Heading_20_" + each.mark.length() + "\" text:outline-level=\""
                    + each.mark.length() + "\">" + each.text + "</text:h>";
        }
        String text = "<text:p text:style-name=\"Text_20_body\">" + each.text + "</text:p>";
        return each.mark.isEmpty() ? text : "<text:list><text:list-item>" + text + "</text:list-item></text:list>";
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    /** Its font embedded, as word processors and browsers do it. */
    private static byte[] pdf(List<Paragraph> paragraphs) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PdfRendererBuilder()
                .useFont(() -> resource("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"), "sans")
                .withHtmlContent(page(paragraphs), null)
                .toStream(bytes)
                .run();
        return bytes.toByteArray();
    }

    private static String rtf(List<Paragraph> paragraphs) {
        return paragraphs.stream()
                .map(each -> "\\pard" + (each.heading() ? "\\s" + each.mark.length() : "\\s0") + " "
                        + (each.heading() || each.mark.isEmpty() ? "" : each.mark + " ") + ascii(each.text) + "\\par\n")
                .collect(Collectors.joining("", "{\\rtf1\\ansi\\deff0{\\fonttbl{\\f0 Serif;}}\n", "}"));
    }

    private static String ascii(String text) {
        return text.chars()
                .mapToObj(sign -> sign < 128 ? String.valueOf((char) sign) : "\\u" + sign + "?")
                .collect(Collectors.joining());
    }

    private static InputStream resource(String name) {
        return Objects.requireNonNull(RecipeDocuments.class.getResourceAsStream(name));
    }

    /** A web page that says nothing for machines. */
    private static String page(List<Paragraph> paragraphs) {
        return paragraphs.stream()
                .map(each -> switch (each.mark) {
                    case "" -> "<p>" + each.text + "</p>\n";
                    case "-" -> "<ul><li>" + each.text + "</li></ul>\n";
                    case "#", "##", "###" ->
                        "<h" + each.mark.length() + ">" + each.text + "</h" + each.mark.length() + ">\n";
                    default -> "<ol start=\"" + each.mark.replace(".", "") + "\"><li>" + each.text + "</li></ol>\n";
                })
                .collect(Collectors.joining(
                        "",
                        "<html><head><title>Recipe</title><style>body { font: 10pt sans; line-height: 1.2 } p, li, h2, h3 { margin: 2pt }</style></head><body>\n",
                        "</body></html>"));
    }
}
