package org.misecue.recipe;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** The rolls in each kind of document, uncompressed, with the words that give each format its meaning. */
final class FuzzSeeds {

    static final String MARKDOWN = lines("# ", "## ", "### ", "- ", "1. ", "")
            + "\n| amount | ingredient |\n|---|---|\n| 20 g | butter |\n\n> quoted\n";
    static final List<String> MARKDOWN_WORDS = List.of(
            "#", "- ", "\n\n", "|", "|---|", "**", "> ", "    ", "1. ", "[ ] ", "<br>", "[a](b)", "½", "\t", "`");

    static final String TEXT = "Subject: Fwd: rolls\n\n" + lines("", "\n", "", "* ", "1) ", "");
    static final List<String> TEXT_WORDS = List.of(
            "> ",
            "\n",
            "Ingredients",
            "Method",
            "-- \n",
            "½",
            "1/2",
            " x ",
            "g",
            "cup",
            "(",
            ")",
            "999999999",
            "for the ");

    static final String HTML = Documents.html();
    static final List<String> HTML_WORDS = List.of(
            "<table><tr><td>",
            "<div>",
            "</div>",
            "<ul><li>",
            "</li>",
            "<br>",
            "&frac12;",
            "<b>",
            "<ol>",
            "<!--",
            "<p>",
            "<script>",
            "itemscope itemtype=\"https://schema.org/Recipe\"",
            "itemprop=\"recipeIngredient\"");

    static final String JSON = """
            {"@context":"https://schema.org","@graph":[{"@type":["Recipe"],"name":"Rolls","recipeYield":["9","9 rolls"],
            "recipeIngredient":["300 g rye flour","1&frac12; tsp salt"],"recipeInstructions":[{"@type":"HowToSection",
            "name":"Dough","itemListElement":[{"@type":"HowToStep","text":"Mix the flour and salt."}]},"Bake."]}]}""";
    static final List<String> JSON_WORDS = List.of(
            "[",
            "]",
            "{",
            "}",
            "\"",
            ",",
            ":",
            "null",
            "1e999",
            "{\"@graph\":[",
            "\\u0000",
            "&lt;",
            "<p>",
            "\"text\":",
            "\\");

    static final String DOCX = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><w:document"
            + " xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"><w:body>"
            + each(line -> "<w:p><w:pPr><w:pStyle w:val=\"Heading" + line[0].replaceAll("\\D", "")
                    + "\"/></w:pPr><w:r><w:t>" + line[1] + "</w:t></w:r></w:p>")
            + "<w:tbl><w:tr><w:tc><w:p><w:r><w:t>20 g</w:t></w:r></w:p></w:tc></w:tr></w:tbl></w:body></w:document>";
    static final List<String> DOCX_WORDS = List.of(
            "<w:p>",
            "</w:p>",
            "<w:tbl><w:tr><w:tc>",
            "</w:tc></w:tr></w:tbl>",
            "<w:numPr><w:ilvl w:val=\"0\"/>",
            "<w:br/>",
            "<w:r><w:t>",
            "</w:t></w:r>",
            "<w:sdt>",
            "<w:txbxContent>",
            "&#0;",
            "<!DOCTYPE x [",
            "<w:footnoteReference w:id=\"1\"/>");

    static final String ODT = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content"
            + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
            + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
            + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:text>"
            + each(line -> "<text:p>" + line[1] + "</text:p>")
            + "<text:list><text:list-item><text:p>20 g</text:p></text:list-item></text:list></office:text></office:body>"
            + "</office:document-content>";
    static final List<String> ODT_WORDS = List.of(
            "<text:list><text:list-item>",
            "</text:list-item></text:list>",
            "<text:p>",
            "</text:p>",
            "<table:table>",
            "<table:table-row>",
            "<table:table-cell table:number-columns-repeated=\"99999999\">",
            "<text:s text:c=\"99999999\"/>",
            "<text:h text:outline-level=\"-1\">",
            "<text:note>",
            "<text:span>",
            "&#0;",
            "<!DOCTYPE x [");

    static final String RTF = "{\\rtf1\\ansi\\deff0{\\fonttbl{\\f0 Serif;}}\\pard "
            + each(line -> line[1].replaceAll("[^\\x20-\\x7e]", "\\\\u189?") + "\\par\n")
            + "\\trowd\\cellx1000\\cellx2000\\intbl 20 g\\cell butter\\cell\\row}";
    static final List<String> RTF_WORDS = List.of(
            "{",
            "}",
            "\\",
            "\\par ",
            "\\bin99999999 ",
            "\\'",
            "\\u-1?",
            "\\cell ",
            "\\row ",
            "{\\*\\listtable{\\list",
            "\\ls1 ",
            "{\\field{\\*\\fldinst",
            "\\uc9 ",
            "{\\pict ",
            "{\\object{\\*\\objdata 0105");

    static final List<String> PDF_WORDS = List.of(
            "<<",
            ">>",
            "[",
            "]",
            "1 0 R",
            "2 0 R",
            "3 0 R",
            "/Kids",
            "/Count 99999999",
            "/Length 99999999",
            "stream\n",
            "endstream",
            "endobj",
            "/Filter /FlateDecode",
            "BT",
            "ET",
            "Tj",
            "/Encrypt 1 0 R",
            "/Type /ObjStm",
            "(",
            ")");

    private static String pdf = "";

    private FuzzSeeds() {}

    static byte[] docx(String xml) throws IOException {
        return Documents.zipped(Documents::docxParts, "word/document.xml", xml);
    }

    static byte[] odt(String xml) throws IOException {
        return Documents.zipped(Documents::odtParts, "content.xml", xml);
    }

    static synchronized String pdf() throws IOException {
        if (pdf.isEmpty()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (PDDocument document = new PDDocument()) {
                document.addPage(new PDPage());
                write(document);
                document.save(bytes, CompressParameters.NO_COMPRESSION);
            }
            pdf = bytes.toString(StandardCharsets.ISO_8859_1);
        }
        return pdf;
    }

    private static void write(PDDocument document) throws IOException {
        try (PDPageContentStream page = new PDPageContentStream(
                document, document.getPage(0), PDPageContentStream.AppendMode.OVERWRITE, false)) {
            page.beginText();
            page.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 11);
            page.setLeading(16);
            page.newLineAtOffset(50, 750);
            for (String[] line : Documents.ROLLS) {
                page.showText(line[1]);
                page.newLine();
            }
            page.endText();
        }
    }

    private static String lines(String h1, String h2, String h3, String item, String step, String text) {
        return each(line -> switch (line[0]) {
                    case "h1" -> h1;
                    case "h2" -> "\n" + h2;
                    case "h3" -> "\n" + h3;
                    case "li" -> item;
                    case "ol" -> step;
                    default -> text;
                }
                + line[1] + "\n");
    }

    private static String each(java.util.function.Function<String[], String> line) {
        return Stream.of(Documents.ROLLS).map(line).collect(Collectors.joining());
    }
}
