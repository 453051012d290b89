package org.misecue.narration;

import java.io.StringReader;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** TTML and its profiles such as IMSC, by the W3C's Timed Text Markup Language; each paragraph is a cue. */
final class TtmlReader implements CueFormat {

    /** Each part is taken once and never given back, so that odd beginnings cost no time. */
    private static final Pattern ROOT = Pattern.compile(
            "\\s*+(?>(?><\\?.*?\\?>|<!--.*?-->|<!DOCTYPE[^>\\[]*>)\\s*+)*+<(?:[\\w.-]{1,40}:)?tt[\\s>/]",
            Pattern.DOTALL);

    @Override
    public String name() {
        return "TTML";
    }

    @Override
    public List<String> extensions() {
        return List.of(".ttml", ".dfxp", ".xml");
    }

    @Override
    public String example() {
        return "<p begin=\"00:01:05.000\" end=\"00:01:09.500\">its text</p> within tt, body and div";
    }

    @Override
    public boolean recognises(String text) {
        return ROOT.matcher(text).lookingAt();
    }

    @Override
    public void read(String text, CueSheet sheet) {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
            new TtmlWalk(xml, sheet).document();
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
            throw sheet.badInput(
                    line,
                    1,
                    "expected XML that is whole, but it is broken here; write the file anew from the program that made it");
        }
    }

    /** Nothing outside the file is read, and nothing is declared in it. */
    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }
}
