package org.misecue.recipe;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** The oat slice as PDF, laid out and drawn as programs do it: row by row across the columns, or in any order. */
final class PdfDocuments {

    private static final PDFont FONT = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private static final int PITCH = 14;

    private record Piece(int page, int x, int y, int size, String text) {}

    private final List<Piece> pieces = new ArrayList<>();
    private int page;

    private PdfDocuments() {}

    /** Ingredients left, method right; each row is drawn across both before the next. */
    static byte[] besideByRows(int sunk) throws IOException {
        PdfDocuments pdf = new PdfDocuments();
        pdf.head();
        pdf.column(50, 660, ingredients("• ", true));
        pdf.column(250, 660 - sunk, method(52));
        return pdf.bytes();
    }

    /** A title across, the parts of the ingredients beside each other, the method over the whole width again. */
    static byte[] partsBeside() throws IOException {
        PdfDocuments pdf = new PdfDocuments();
        pdf.write(50, 740, 22, OatSlice.TITLE);
        pdf.write(50, 705, 11, OatSlice.MAKES);
        pdf.write(50, 680, 11, "Ingredients");
        pdf.column(
                50,
                655,
                Stream.concat(Stream.of("For the base:"), OatSlice.BASE.stream())
                        .toList());
        pdf.column(
                200,
                655,
                Stream.concat(Stream.of("For the icing:"), OatSlice.ICING.stream())
                        .toList());
        pdf.column(50, 560, method(84));
        return pdf.bytes();
    }

    /** Names left and amounts right, with dots between or without. */
    static byte[] amountsRight(String dots) throws IOException {
        PdfDocuments pdf = new PdfDocuments();
        pdf.write(50, 740, 20, "Buns");
        pdf.write(50, 720, 11, "Makes 12 buns");
        pdf.write(50, 700, 11, "Ingredients");
        int y = 680;
        for (String[] each :
                new String[][] {{"plain flour", "500 g"}, {"butter", "80 g"}, {"fine salt", "1 tsp"}, {"eggs", "2"}}) {
            pdf.write(50, y, 11, each[0] + dots);
            pdf.write(330, y, 11, each[1]);
            y -= PITCH;
        }
        pdf.write(50, 600, 11, "Method");
        pdf.write(50, 586, 11, "1. Mix the flour and butter with the salt and eggs.");
        pdf.write(50, 572, 11, "2. Bake for 20 minutes.");
        return pdf.bytes();
    }

    /** Amounts in a column of their own before the names. */
    static byte[] amountsLeft() throws IOException {
        PdfDocuments pdf = new PdfDocuments();
        pdf.head();
        List<String> all = ingredients("", false);
        int y = 660;
        for (String line : all) {
            String[] cells = Character.isLetter(line.charAt(0)) ? new String[] {line, ""} : OatSlice.cells(line);
            pdf.write(50, y, 11, cells[0]);
            pdf.write(120, y, 11, cells[1]);
            y -= PITCH;
        }
        pdf.column(50, y - PITCH, method(84));
        return pdf.bytes();
    }

    /** Two columns on each of two pages, which are numbered and bear the name of a book. */
    static byte[] pages() throws IOException {
        PdfDocuments pdf = new PdfDocuments();
        pdf.head();
        pdf.column(50, 660, ingredients("• ", true));
        List<String> method = method(52);
        pdf.column(250, 660, method.subList(0, 4));
        pdf.foot("1");
        pdf.page = 1;
        pdf.column(50, 740, method.subList(4, method.size()));
        pdf.foot("2");
        return pdf.bytes();
    }

    private void foot(String number) {
        write(50, 60, 9, "Slices and bars, second printing");
        write(300, 40, 9, number);
    }

    private void head() {
        write(50, 740, 20, OatSlice.TITLE);
        write(50, 705, 11, OatSlice.MAKES);
    }

    private static List<String> ingredients(String bullet, boolean gaps) {
        List<String> list = new ArrayList<>(List.of("Ingredients", "For the base:"));
        OatSlice.BASE.forEach(line -> list.add(bullet + line));
        if (gaps) {
            list.add("");
        }
        list.add("For the icing:");
        OatSlice.ICING.forEach(line -> list.add(bullet + line));
        return list;
    }

    private static List<String> method(int width) {
        List<String> method = new ArrayList<>(List.of("Method"));
        for (int at = 0; at < OatSlice.STEPS.size(); at++) {
            method.addAll(OtherDocuments.wrapped(at + 1 + ". " + OatSlice.STEPS.get(at), width));
        }
        return method;
    }

    private void column(int x, int y, List<String> lines) {
        for (int at = 0; at < lines.size(); at++) {
            write(x, y - at * PITCH, 11, lines.get(at));
        }
    }

    private void write(int x, int y, int size, String text) {
        if (!text.isEmpty()) {
            pieces.add(new Piece(page, x, y, size, text));
        }
    }

    /** Drawn from top to bottom, left and right in turn. */
    private byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            for (int at = 0; at <= page; at++) {
                document.addPage(new PDPage());
                draw(document, at);
            }
            document.save(bytes);
        }
        return bytes.toByteArray();
    }

    private void draw(PDDocument document, int number) throws IOException {
        try (PDPageContentStream content = new PDPageContentStream(document, document.getPage(number))) {
            for (Piece piece : pieces.stream()
                    .filter(each -> each.page() == number)
                    .sorted(Comparator.comparingInt(Piece::y).reversed().thenComparingInt(Piece::x))
                    .toList()) {
                content.beginText();
                content.setFont(FONT, piece.size());
                content.newLineAtOffset(piece.x(), piece.y());
                content.showText(piece.text());
                content.endText();
            }
        }
    }
}
