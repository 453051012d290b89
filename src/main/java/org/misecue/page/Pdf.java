package org.misecue.page;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Prints a page as PDF. The page must be well-formed XML; nothing it names is fetched. */
public final class Pdf {

    /** Comes with PDFBox; has the eighths and arrows that the built-in fonts of PDF lack. */
    private static final String SPARE_FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final Pattern NOT_XML =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    private Pdf() {}

    public static byte[] of(String page) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useUriResolver((base, uri) -> null);
        builder.withHtmlContent(page, null);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            return timeless(renderer.getPdfDocument());
        } catch (IOException e) {
            throw new UncheckedIOException("the page could not be printed", e);
        }
    }

    /** The same page gives the same bytes: no time of printing, and an identifier that does not depend on it. */
    private static byte[] timeless(PDDocument document) throws IOException {
        document.getDocumentInformation().setCreationDate(null);
        document.getDocumentInformation().setModificationDate(null);
        document.setDocumentId(0L);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }
}
