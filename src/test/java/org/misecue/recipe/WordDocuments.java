package org.misecue.recipe;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xwpf.usermodel.XWPFAbstractNum;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFStyle;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTAbstractNum;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTStyle;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STNumberFormat;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STStyleType;

/** The oat slice as a word processor's .docx, set in several ways. */
final class WordDocuments implements AutoCloseable {

    private final XWPFDocument document = new XWPFDocument();
    private final java.math.BigInteger bullets;
    private final java.math.BigInteger numbers;

    private WordDocuments() {
        document.createStyles();
        for (int level = 1; level <= 3; level++) {
            CTStyle style = CTStyle.Factory.newInstance();
            style.setStyleId("Heading" + level);
            style.addNewName().setVal("heading " + level);
            style.setType(STStyleType.PARAGRAPH);
            document.getStyles().addStyle(new XWPFStyle(style));
        }
        document.createNumbering();
        bullets = numbering(0, STNumberFormat.BULLET, "•");
        numbers = numbering(1, STNumberFormat.DECIMAL, "%1.");
    }

    /** Headings and automatic lists. */
    static byte[] lists() throws IOException {
        try (WordDocuments word = new WordDocuments()) {
            word.head();
            word.heading(2, "Ingredients");
            word.heading(3, "For the base");
            OatSlice.BASE.forEach(word::bullet);
            word.heading(3, "For the icing");
            OatSlice.ICING.forEach(word::bullet);
            word.method();
            return word.bytes();
        }
    }

    /** A table of amount and ingredient under its own head row, and one for each part. */
    static byte[] tables() throws IOException {
        try (WordDocuments word = new WordDocuments()) {
            word.head();
            word.heading(2, "Ingredients");
            word.heading(3, "For the base");
            word.table(OatSlice.BASE);
            word.heading(3, "For the icing");
            word.table(OatSlice.ICING);
            word.method();
            return word.bytes();
        }
    }

    /** Two columns of ingredients, a part in each, with its heading on top. */
    static byte[] columns() throws IOException {
        try (WordDocuments word = new WordDocuments()) {
            word.head();
            word.heading(2, "Ingredients");
            XWPFTable table = word.document.createTable(OatSlice.BASE.size() + 1, 2);
            table.getRow(0).getCell(0).setText("For the base:");
            table.getRow(0).getCell(1).setText("For the icing:");
            for (int at = 0; at < OatSlice.BASE.size(); at++) {
                table.getRow(at + 1).getCell(0).setText(OatSlice.BASE.get(at));
                table.getRow(at + 1).getCell(1).setText(at < OatSlice.ICING.size() ? OatSlice.ICING.get(at) : "");
            }
            word.method();
            return word.bytes();
        }
    }

    /** A table without lines that sets ingredients left and method right. */
    static byte[] sideBySide() throws IOException {
        try (WordDocuments word = new WordDocuments()) {
            word.head();
            XWPFTable table = word.document.createTable(1, 2);
            XWPFTableCell left = table.getRow(0).getCell(0);
            left.getParagraphs().get(0).createRun().setText("Ingredients");
            say(left, List.of("For the base:"));
            say(left, OatSlice.BASE);
            say(left, List.of("For the icing:"));
            say(left, OatSlice.ICING);
            XWPFTableCell right = table.getRow(0).getCell(1);
            right.getParagraphs().get(0).createRun().setText("Method");
            say(right, OatSlice.STEPS);
            return word.bytes();
        }
    }

    /** One paragraph for a list, its lines broken by hand. */
    static byte[] brokenByHand() throws IOException {
        try (WordDocuments word = new WordDocuments()) {
            word.head();
            word.heading(2, "Ingredients");
            word.heading(3, "For the base");
            word.broken(OatSlice.BASE);
            word.heading(3, "For the icing");
            word.broken(OatSlice.ICING);
            word.method();
            return word.bytes();
        }
    }

    private void broken(List<String> lines) {
        XWPFRun run = document.createParagraph().createRun();
        for (String line : lines) {
            run.setText(line);
            run.addBreak();
        }
    }

    /** The ingredients in a text box. */
    static byte[] textBox() throws IOException {
        String box = Stream.of(List.of("For the base:"), OatSlice.BASE, List.of("For the icing:"), OatSlice.ICING)
                .flatMap(List::stream)
                .map(WordDocuments::p)
                .collect(Collectors.joining());
        return FuzzSeeds.docx(
                "<w:document xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"><w:body>"
                        + p(OatSlice.TITLE) + p(OatSlice.MAKES) + p("Ingredients")
                        + "<w:p><w:r><w:pict><v:shape xmlns:v=\"urn:schemas-microsoft-com:vml\"><v:textbox><w:txbxContent>"
                        + box
                        + "</w:txbxContent></v:textbox></v:shape></w:pict></w:r></w:p>" + p("Method")
                        + OatSlice.STEPS.stream().map(WordDocuments::p).collect(Collectors.joining())
                        + "</w:body></w:document>");
    }

    private static String p(String text) {
        return "<w:p><w:r><w:t>" + text + "</w:t></w:r></w:p>";
    }

    private static void say(XWPFTableCell cell, List<String> lines) {
        lines.forEach(line -> cell.addParagraph().createRun().setText(line));
    }

    private void head() {
        heading(1, OatSlice.TITLE);
        document.createParagraph().createRun().setText(OatSlice.MAKES);
    }

    private void method() {
        heading(2, "Method");
        for (String step : OatSlice.STEPS) {
            XWPFParagraph paragraph = document.createParagraph();
            paragraph.setNumID(numbers);
            paragraph.createRun().setText(step);
        }
    }

    private void heading(int level, String text) {
        XWPFParagraph paragraph = document.createParagraph();
        paragraph.setStyle("Heading" + level);
        paragraph.createRun().setText(text);
    }

    private void bullet(String text) {
        XWPFParagraph paragraph = document.createParagraph();
        paragraph.setNumID(bullets);
        paragraph.createRun().setText(text);
    }

    private void table(List<String> lines) {
        XWPFTable table = document.createTable(lines.size() + 1, 2);
        table.getRow(0).getCell(0).setText("Amount");
        table.getRow(0).getCell(1).setText("Ingredient");
        for (int at = 0; at < lines.size(); at++) {
            String[] cells = OatSlice.cells(lines.get(at));
            table.getRow(at + 1).getCell(0).setText(cells[0]);
            table.getRow(at + 1).getCell(1).setText(cells[1]);
        }
    }

    private java.math.BigInteger numbering(int id, STNumberFormat.Enum format, String mark) {
        CTAbstractNum list = CTAbstractNum.Factory.newInstance();
        list.setAbstractNumId(java.math.BigInteger.valueOf(id));
        var level = list.addNewLvl();
        level.setIlvl(java.math.BigInteger.ZERO);
        level.addNewStart().setVal(java.math.BigInteger.ONE);
        level.addNewNumFmt().setVal(format);
        level.addNewLvlText().setVal(mark);
        var added = document.getNumbering().addAbstractNum(new XWPFAbstractNum(list));
        return document.getNumbering().addNum(added);
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.write(bytes);
        return bytes.toByteArray();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
