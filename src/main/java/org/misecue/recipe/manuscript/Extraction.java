package org.misecue.recipe.manuscript;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.tika.exception.EncryptedDocumentException;
import org.apache.tika.exception.TikaException;
import org.apache.tika.exception.WriteLimitReachedException;
import org.apache.tika.extractor.EmbeddedDocumentExtractor;
import org.apache.tika.io.TikaInputStream;
import org.apache.tika.metadata.Metadata;
import org.apache.tika.metadata.TikaCoreProperties;
import org.apache.tika.parser.AutoDetectParser;
import org.apache.tika.parser.ParseContext;
import org.apache.tika.parser.pdf.PDFParserConfig;
import org.apache.tika.sax.ToXMLContentHandler;
import org.apache.tika.sax.WriteOutContentHandler;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.misecue.notice.BadInput;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;

/** Lets Tika read a document as XHTML, within limits: so many characters, nothing embedded. */
final class Extraction {

    /** A recipe takes less than one; after this the document is built to keep its reader busy. */
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private Extraction() {}

    /** The body of the document as XHTML. */
    static Element body(Document document) {
        ToXMLContentHandler xhtml = new ToXMLContentHandler();
        within(document, new WriteOutContentHandler(xhtml, Document.MOST_CHARACTERS));
        return body(xhtml.toString());
    }

    static Element body(String xhtml) {
        Element body = Jsoup.parse(xhtml, "", Parser.xmlParser()).selectFirst("body");
        return body == null ? new Element("body") : body;
    }

    /** Parses on a thread of its own, which can be left behind: libraries do not ask whether they should stop. */
    private static void within(Document document, ContentHandler handler) {
        FutureTask<Void> parsing = new FutureTask<>(() -> {
            parse(document, handler);
            return null;
        });
        Thread thread = new Thread(parsing, "reading " + document.name());
        thread.setDaemon(true);
        thread.start();
        try {
            parsing.get(LONGEST.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            thread.interrupt();
            throw document.refuse("the document takes too long to read; paste the recipe into a text file.", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw document.refuse("reading was stopped; try again.", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof BadInput refused ? refused : damaged(document, e);
        }
    }

    private static BadInput damaged(Document document, Throwable cause) {
        return document.refuse(
                "the document is damaged or not what its name says; save it again, or paste the recipe into a text file.",
                cause);
    }

    private static void parse(Document document, ContentHandler handler) {
        Metadata metadata = new Metadata();
        metadata.set(TikaCoreProperties.RESOURCE_NAME_KEY, document.name());
        ParseContext context = new ParseContext();
        context.set(EmbeddedDocumentExtractor.class, new NothingEmbedded());
        PDFParserConfig pdf = new PDFParserConfig();
        pdf.setOcrStrategy(PDFParserConfig.OCR_STRATEGY.NO_OCR);
        context.set(PDFParserConfig.class, pdf);
        try (TikaInputStream stream = TikaInputStream.get(new ByteArrayInputStream(document.bytes()))) {
            new AutoDetectParser().parse(stream, handler, metadata, context);
        } catch (EncryptedDocumentException e) {
            throw document.refuse("the document is locked with a password; save a copy without one.", e);
        } catch (WriteLimitReachedException e) {
            throw document.tooLong();
        } catch (TikaException | SAXException | java.io.IOException | RuntimeException e) {
            throw damaged(document, e);
        }
    }

    private static final class NothingEmbedded implements EmbeddedDocumentExtractor {

        @Override
        public boolean shouldParseEmbedded(Metadata metadata) {
            return false;
        }

        @Override
        public void parseEmbedded(InputStream stream, ContentHandler handler, Metadata metadata, boolean outputHtml) {
            // Pictures and attachments hold no recipe.
        }
    }
}
