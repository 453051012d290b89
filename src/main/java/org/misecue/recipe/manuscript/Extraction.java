package org.misecue.recipe.manuscript;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
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
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;

/** Lets Tika read a document as XHTML, within limits: so many characters, nothing embedded. */
final class Extraction {

    private static final int MOST_CHARACTERS = 2_000_000;

    private Extraction() {}

    /** The body of the document as XHTML. */
    static Element body(Document document) {
        ToXMLContentHandler xhtml = new ToXMLContentHandler();
        parse(document, new WriteOutContentHandler(xhtml, MOST_CHARACTERS));
        Element body = Jsoup.parse(xhtml.toString(), "", Parser.xmlParser()).selectFirst("body");
        return body == null ? new Element("body") : body;
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
            throw document.refuse(
                    "there is far more text in it than a recipe has; keep only the recipe in this file.", e);
        } catch (TikaException | SAXException | java.io.IOException | RuntimeException e) {
            throw document.refuse(
                    "the document is damaged or not what its name says; save it again, or paste the recipe into a text file.",
                    e);
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
