package org.misecue.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgExternalResourceMode;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Prints a page as PDF. The page must be well-formed XML; nothing it names is fetched. */
public final class Pdf {

    /** Comes with PDFBox; has the eighths and arrows that the built-in fonts of PDF lack. */
    private static final String SPARE_FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private Pdf() {}

    public static byte[] of(String page) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useUriResolver((base, uri) -> null);
        builder.useFont(Pdf::spareFont, "Spare", 400, FontStyle.NORMAL, true, EnumSet.of(FSFontUseCase.FALLBACK_FINAL));
        builder.withHtmlContent(printable(page), null);
        if (page.contains("<svg")) {
            // Draws nothing from outside and runs no script.
            builder.useSVGDrawer(new BatikSVGDrawer(SvgScriptMode.SECURE, SvgExternalResourceMode.SECURE));
        }
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

    /** Thirds are in neither font; control characters are not XML. */
    private static String printable(String page) {
        String spelled = page.replace("⅓", " 1/3").replace("⅔", " 2/3");
        return Pages.withoutControls(spelled);
    }

    private static InputStream spareFont() {
        return Objects.requireNonNull(PDDocument.class.getResourceAsStream(SPARE_FONT), SPARE_FONT);
    }
}
