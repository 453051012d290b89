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

/** A recipe of usual length, twenty ingredient lines in four parts and ten steps, as each kind of document. */
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

    private RecipeDocuments() {}

    static String markdown() throws IOException {
        try (InputStream in = Objects.requireNonNull(RecipeDocuments.class.getResourceAsStream("reading.md"))) {
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

    private static byte[] odt(List<Paragraph> paragraphs) throws IOException {
        String body = paragraphs.stream().map(RecipeDocuments::odtParagraph).collect(Collectors.joining());
        String content = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content"
                + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:text>" + body
                + "</office:text></office:body></office:document-content>";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            entry(zip, "mimetype", "application/vnd.oasis.opendocument.text");
            entry(zip, "content.xml", content);
        }
        return bytes.toByteArray();
    }

    private static String odtParagraph(Paragraph each) {
        if (each.heading()) {
            return "<text:h text:outline-level=\"" + each.mark.length() + "\">" + each.text + "</text:h>";
        }
        String text = "<text:p>" + each.text + "</text:p>";
        return each.mark.isEmpty() ? text : "<text:list><text:list-item>" + text + "</text:list-item></text:list>";
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static byte[] pdf(List<Paragraph> paragraphs) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PdfRendererBuilder()
                .withHtmlContent(page(paragraphs), null)
                .toStream(bytes)
                .run();
        return bytes.toByteArray();
    }

    /** A web page that says nothing for machines. */
    private static String page(List<Paragraph> paragraphs) {
        return paragraphs.stream()
                .map(each -> switch (each.mark) {
                    case "" -> "<p>" + each.text + "</p>\n";
                    case "-" -> "<ul><li>" + each.text + "</li></ul>\n";
                    case "#", "##", "###" -> "<h" + each.mark.length() + ">" + each.text + "</h" + each.mark.length() + ">\n";
                    default -> "<ol start=\"" + each.mark.replace(".", "") + "\"><li>" + each.text + "</li></ol>\n";
                })
                .collect(Collectors.joining("", "<html><head><title>Recipe</title></head><body>\n", "</body></html>"));
    }
}
