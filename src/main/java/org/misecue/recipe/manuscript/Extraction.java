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
import org.apache.tika.parser.microsoft.OfficeParserConfig;
import org.apache.tika.sax.ToXMLContentHandler;
import org.apache.tika.sax.WriteOutContentHandler;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;

/** Lets Tika read a document as XHTML, within limits: so many characters, nothing embedded. */
final class Extraction {

    /** Tika looks for all its parsers when one is made, which takes longer than to read a document. */
    private static final class Parsers {
        static final AutoDetectParser ALL = new AutoDetectParser();
    }

    private Extraction() {}

    /** The body of the document as XHTML. */
    static Element body(Document document) {
        ToXMLContentHandler xhtml = new ToXMLContentHandler();
        parse(document, new WriteOutContentHandler(xhtml, Document.MOST_CHARACTERS));
        return body(xhtml.toString());
    }

    static Element body(String xhtml) {
        Element body = Jsoup.parse(xhtml, "", Parser.xmlParser()).selectFirst("body");
        return body == null ? new Element("body") : body;
    }

    private static void parse(Document document, ContentHandler handler) {
        Metadata metadata = new Metadata();
        metadata.set(TikaCoreProperties.RESOURCE_NAME_KEY, document.name());
        ParseContext context = new ParseContext();
        context.set(EmbeddedDocumentExtractor.class, new NothingEmbedded());
        OfficeParserConfig office = new OfficeParserConfig();
        office.setIncludeHeadersAndFooters(false);
        context.set(OfficeParserConfig.class, office);
        try (TikaInputStream stream = TikaInputStream.get(new ByteArrayInputStream(document.bytes()))) {
            Parsers.ALL.parse(stream, handler, metadata, context);
        } catch (EncryptedDocumentException e) {
            throw document.locked(e);
        } catch (WriteLimitReachedException e) {
            throw document.tooLong();
        } catch (TikaException | SAXException | java.io.IOException | RuntimeException e) {
            throw document.damaged(e);
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
