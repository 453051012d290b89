package org.misecue.page;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Prints a page as PDF. The page must be well-formed XML; nothing it names is fetched. */
public final class Pdf {

    private Pdf() {}

    public static byte[] of(String page) {
        Logger.getLogger("com.openhtmltopdf").setLevel(Level.OFF);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useUriResolver((base, uri) -> null);
        builder.withHtmlContent(page, null);
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException("the page could not be printed", e);
        }
        return out.toByteArray();
    }
}
