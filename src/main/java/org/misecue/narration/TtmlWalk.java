package org.misecue.narration;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Walks once through a TTML document: who speaks from its head, and from its body what is said and when. */
final class TtmlWalk {

    private static final Set<String> TIMED = Set.of("body", "div", "p", "span");
    private static final Set<String> INNER_RUBY = Set.of("text", "textContainer", "delimiter");
    /** Real documents have five or six. */
    private static final int DEEPEST = 60;

    private final XMLStreamReader xml;
    private final CueSheet sheet;
    private final Map<String, String> agents = new HashMap<>();
    private TtmlClock clock = TtmlParameters.clock(name -> Optional.empty(), problem -> {});
    private int depth;

    TtmlWalk(XMLStreamReader xml, CueSheet sheet) {
        this.xml = xml;
        this.sheet = sheet;
    }

    /** What holds for everything inside an element. */
    private record Around(TtmlTime time, boolean inTurn, Optional<String> voice, Optional<TtmlParagraph> paragraph) {}

    void document() throws XMLStreamException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                root();
                inside(new Around(TtmlTime.ALWAYS, false, Optional.empty(), Optional.empty()));
            }
        }
    }

    private void root() {
        int line = line();
        if (!xml.getLocalName().equals("tt")) {
            throw sheet.badInput(
                    line,
                    1,
                    "expected TTML, XML that begins with tt, but this begins with “" + xml.getLocalName()
                            + "”; save the narration as TTML, WebVTT or SubRip");
        }
        clock = TtmlParameters.clock(this::attribute, problem -> sheet.note(line, problem));
    }

    /** Everything up to the end of the element whose start was just read. */
    private void inside(Around around) throws XMLStreamException {
        if (++depth > DEEPEST) {
            throw sheet.badInput(
                    line(),
                    1,
                    "expected a document of few levels, but this one has more than " + DEEPEST
                            + "; write it anew from the program that made it");
        }
        Duration from = around.time().begin();
        while (xml.next() != XMLStreamConstants.END_ELEMENT) {
            if (xml.isStartElement()) {
                from = element(around, from);
            } else if (xml.isCharacters()) {
                around.paragraph().ifPresent(paragraph -> paragraph.say(xml.getText(), around.voice()));
            }
        }
        depth--;
    }

    /** @return from when the times of the next element count */
    private Duration element(Around around, Duration from) throws XMLStreamException {
        String name = xml.getLocalName();
        if (name.equals("head") || name.equals("metadata") && around.paragraph().isEmpty()) {
            inside(around);
        } else if (name.equals("agent")) {
            agent();
        } else if (name.equals("br")) {
            around.paragraph().ifPresent(paragraph -> paragraph.say(" ", Optional.empty()));
            skip();
        } else if (TIMED.contains(name) && !isInnerRuby()) {
            return timed(name, around, from);
        } else {
            skip();
        }
        return from;
    }

    private boolean isInnerRuby() {
        return attribute("ruby").filter(INNER_RUBY::contains).isPresent();
    }

    private Duration timed(String name, Around around, Duration from) throws XMLStreamException {
        int line = line();
        Optional<TtmlTime> read = time(around, from);
        if (read.isEmpty()) {
            sheet.note(
                    line,
                    "expected times such as 00:01:05.000, 00:01:05:06 or 65.5s; " + name
                            + " was left out with everything in it");
            skip();
            return from;
        }
        TtmlTime time = read.get();
        if (time.isTooLateFor(around.time())) {
            sheet.note(line, name + " begins when what it stands in is over; it was left out with everything in it");
            skip();
            return from;
        }
        boolean inTurn = attribute("timeContainer").equals(Optional.of("seq"));
        Optional<String> voice = attribute("agent").map(this::voice).orElse(around.voice());
        if (name.equals("p")) {
            TtmlParagraph paragraph = new TtmlParagraph(line, time);
            inside(new Around(time, inTurn, voice, Optional.of(paragraph)));
            put(paragraph, line);
        } else if (around.paragraph().isPresent() && hasTime(time, around.time())) {
            around.paragraph().get().turn(Optional.of(time));
            inside(new Around(time, inTurn, voice, around.paragraph()));
            around.paragraph().get().turn(Optional.empty());
        } else {
            inside(new Around(time, inTurn, voice, around.paragraph()));
        }
        return around.inTurn() ? time.end().orElse(time.begin()) : from;
    }

    private static boolean hasTime(TtmlTime span, TtmlTime around) {
        return span.told() && !span.equals(around);
    }

    private void put(TtmlParagraph paragraph, int line) {
        CueSheet.Draft draft = paragraph.draft();
        if (paragraph.isTimed()) {
            sheet.add(draft);
        } else if (!draft.words().isEmpty()) {
            sheet.note(line, "no time stands on this paragraph or around it; it was left out");
        }
    }

    /** Empty where one of its times cannot be read. */
    private Optional<TtmlTime> time(Around around, Duration from) {
        Optional<String> begin = attribute("begin");
        Optional<String> end = attribute("end");
        Optional<String> dur = attribute("dur");
        Optional<Duration> starts = begin.map(String::strip).flatMap(clock::time);
        Optional<Duration> ends = end.map(String::strip).flatMap(clock::time);
        Optional<Duration> lasts = dur.map(String::strip).flatMap(clock::time);
        boolean readable = starts.isPresent() == begin.isPresent()
                && ends.isPresent() == end.isPresent()
                && lasts.isPresent() == dur.isPresent();
        return readable ? Optional.of(around.time().child(from, starts, ends, lasts)) : Optional.empty();
    }

    /** A name for an agent; of several, one is enough. */
    private void agent() throws XMLStreamException {
        Optional<String> id = attribute("id");
        StringBuilder name = new StringBuilder();
        int level = 1;
        while (level > 0) {
            int event = xml.next();
            level += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
            if (xml.isCharacters()
                    && level == 2
                    && !(name.length() > 0 && xml.getText().isBlank())) {
                name.append(xml.getText());
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && level == 1
                    && !name.toString().isBlank()) {
                id.ifPresent(known ->
                        agents.putIfAbsent(known, name.toString().strip().replaceAll("\\s+", " ")));
            }
        }
    }

    private Optional<String> voice(String agent) {
        String[] ids = agent.strip().split("\\s+");
        return ids.length == 1 ? Optional.ofNullable(agents.get(ids[0])) : Optional.empty();
    }

    private void skip() throws XMLStreamException {
        int level = 1;
        while (level > 0) {
            int event = xml.next();
            level += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    /** By its local name: files in the wild have the namespaces of every draft. */
    private Optional<String> attribute(String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)) {
                return Optional.of(xml.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    private int line() {
        return Math.max(1, xml.getLocation().getLineNumber());
    }
}
