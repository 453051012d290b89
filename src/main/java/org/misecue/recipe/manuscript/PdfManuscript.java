package org.misecue.recipe.manuscript;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.misecue.notice.BadInput;

/** A PDF with text in it, read as plain text: its lines are those of the page, not of a file. */
final class PdfManuscript implements ManuscriptReader {

    @Override
    public boolean takes(String type) {
        return type.equals("application/pdf");
    }

    @Override
    public Manuscript read(Document document) {
        List<Line> lines = lines(text(document));
        if (lines.isEmpty()) {
            throw document.refuse(
                    "there is no text in this PDF, it may be a scan; have its text recognised first, or paste the recipe into a text file.");
        }
        return new Manuscript("", lines);
    }

    private static String text(Document document) {
        try (PDDocument pdf = Loader.loadPDF(document.bytes())) {
            return PdfText.of(PdfWords.in(document, pdf));
        } catch (InvalidPasswordException e) {
            throw document.locked(e);
        } catch (BadInput e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw document.damaged(e);
        }
    }

    static List<Line> lines(String text) {
        return PlainTextManuscript.lines(text).stream()
                .map(line -> new Line(0, line.kind(), line.level(), line.text(), line.gap()))
                .toList();
    }
}
