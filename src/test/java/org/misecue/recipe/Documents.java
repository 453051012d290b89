package org.misecue.recipe;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;

/** Makes the same small recipe as documents of several kinds. */
final class Documents {

    static final String[][] ROLLS = {
        {"h1", "Seeded Rye Rolls"},
        {"p", "Makes 9 rolls"},
        {"p", "Tin: 20 cm square tin"},
        {"h2", "Ingredients"},
        {"h3", "For the dough"},
        {"li", "300 g rye flour"},
        {"li", "7 g fast-action dried yeast"},
        {"li", "1½ tsp fine salt"},
        {"li", "220 ml warm water"},
        {"h3", "For the topping"},
        {"li", "1 egg, beaten"},
        {"li", "2–3 tbsp pumpkin seeds"},
        {"h2", "Method"},
        {"ol", "Mix the flour, yeast, salt and water and knead for 10 minutes."},
        {"ol", "Prove for 1 hour. Shape into balls."},
        {
            "ol",
            "Heat the oven to 220 °C (200 °C fan). Brush with the egg, scatter with the seeds and bake for 20–25 minutes."
        },
    };

    private Documents() {}

    static Path docx(Path file) throws IOException {
        try (XWPFDocument document = new XWPFDocument();
                OutputStream out = Files.newOutputStream(file)) {
            for (String[] line : ROLLS) {
                XWPFParagraph paragraph = document.createParagraph();
                if (line[0].startsWith("h")) {
                    paragraph.setStyle("Heading" + line[0].charAt(1));
                }
                paragraph.createRun().setText((line[0].equals("li") ? "• " : "") + line[1]);
            }
            document.write(out);
        }
        return file;
    }

    static Path odt(Path file) throws IOException {
        StringBuilder text = new StringBuilder();
        for (String[] line : ROLLS) {
            String words = line[1];
            text.append(
                    switch (line[0].charAt(0)) {
                        case 'h' -> "<text:h text:outline-level=\"" + line[0].charAt(1) + "\">" + words + "</text:h>";
                        case 'l', 'o' ->
                            "<text:list><text:list-item><text:p>" + words + "</text:p></text:list-item></text:list>";
                        default -> "<text:p>" + words + "</text:p>";
                    });
        }
        String content = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content"
                + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:text>" + text
                + "</office:text></office:body></office:document-content>";
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            stored(zip, "mimetype", "application/vnd.oasis.opendocument.text");
            entry(zip, "content.xml", content.getBytes(StandardCharsets.UTF_8));
        }
        return file;
    }

    static Path pdf(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            new PdfRendererBuilder().withHtmlContent(html(), null).toStream(out).run();
        }
        return file;
    }

    static Path lockedPdf(Path file) throws IOException {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        new PdfRendererBuilder().withHtmlContent(html(), null).toStream(plain).run();
        try (PDDocument document = Loader.loadPDF(plain.toByteArray())) {
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(file.toFile());
        }
        return file;
    }

    static Path scannedPdf(Path file) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.save(file.toFile());
        }
        return file;
    }

    static Path rtf(Path file) throws IOException {
        StringBuilder text = new StringBuilder("{\\rtf1\\ansi\\deff0{\\fonttbl{\\f0 Serif;}}\\pard ");
        for (String[] line : ROLLS) {
            for (char each : line[1].toCharArray()) {
                text.append(each < 128 ? String.valueOf(each) : "\\u" + (int) each + "?");
            }
            text.append("\\par\n");
        }
        return Files.writeString(file, text + "}", StandardCharsets.US_ASCII);
    }

    static String html() {
        StringBuilder body = new StringBuilder();
        for (String[] line : ROLLS) {
            String tag = line[0].equals("ol") ? "li" : line[0];
            String list = line[0].equals("ol") ? "ol" : line[0].equals("li") ? "ul" : "div";
            body.append('<')
                    .append(list)
                    .append("><")
                    .append(tag)
                    .append('>')
                    .append(line[1])
                    .append("</")
                    .append(tag)
                    .append("></")
                    .append(list)
                    .append(">\n");
        }
        return "<html><head><title>Rolls</title></head><body>\n" + body + "</body></html>";
    }

    /** A Word file whose text unfolds to far more than the file. */
    static Path bombDocx(Path file, long megabytes) throws IOException {
        byte[] block = new byte[1 << 20];
        java.util.Arrays.fill(block, (byte) 'a');
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            docxParts(zip);
            zip.putNextEntry(new ZipEntry("word/document.xml"));
            zip.write(document("")
                    .replace("</w:t></w:r></w:p></w:body></w:document>", "")
                    .getBytes(StandardCharsets.UTF_8));
            for (long at = 0; at < megabytes; at++) {
                zip.write(block);
            }
            zip.write("</w:t></w:r></w:p></w:body></w:document>".getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        return file;
    }

    /** A Word file that asks its reader to fetch a file of the machine. */
    static Path prying(Path file, Path secret) throws IOException {
        String xml = document("&secret;")
                .replace("<w:document", "<!DOCTYPE w [<!ENTITY secret SYSTEM \"" + secret.toUri() + "\">]><w:document");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            docxParts(zip);
            entry(zip, "word/document.xml", xml.getBytes(StandardCharsets.UTF_8));
        }
        return file;
    }

    private static String document(String text) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><w:document"
                + " xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"><w:body><w:p><w:r><w:t>"
                + text
                + "</w:t></w:r></w:p></w:body></w:document>";
    }

    /** What a kind of archive begins with. */
    interface Parts {
        void write(ZipOutputStream zip) throws IOException;
    }

    static byte[] zipped(Parts parts, String name, String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            parts.write(zip);
            entry(zip, name, text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }

    static void odtParts(ZipOutputStream zip) throws IOException {
        stored(zip, "mimetype", "application/vnd.oasis.opendocument.text");
    }

    static void docxParts(ZipOutputStream zip) throws IOException {
        entry(
                zip,
                "[Content_Types].xml",
                ("<?xml version=\"1.0\"?><Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                                + "<Override PartName=\"/word/document.xml\" ContentType=\"application/vnd.openxmlformats-officedocument"
                                + ".wordprocessingml.document.main+xml\"/></Types>")
                        .getBytes(StandardCharsets.UTF_8));
        entry(
                zip,
                "_rels/.rels",
                ("<?xml version=\"1.0\"?><Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                                + "<Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\""
                                + " Target=\"word/document.xml\"/></Relationships>")
                        .getBytes(StandardCharsets.UTF_8));
    }

    private static void entry(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }

    private static void stored(ZipOutputStream zip, String name, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(bytes);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        entry.setCrc(sum.getValue());
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }
}
