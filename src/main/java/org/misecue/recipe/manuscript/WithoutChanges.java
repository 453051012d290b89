package org.misecue.recipe.manuscript;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Entities;
import org.jsoup.parser.Parser;

/**
 * A word processor's document as it would be printed: without what was struck out while changes were tracked, without
 * comments and hidden words. Libraries read all of these as if they were text.
 */
final class WithoutChanges {

    /** The parts of Word and OpenDocument archives that hold the text. */
    private static final List<String> TEXTS = List.of("word/document.xml", "content.xml");

    private static final Pattern CHANGED = Pattern.compile(
            "<(?:w:(?:del|moveFrom|vanish|commentReference|comment)|text:tracked-changes|office:annotation)\\b");
    private static final String UNPRINTED =
            "w|del, w|moveFrom, w|commentReference, w|commentRangeStart, w|commentRangeEnd,"
                    + " w|r:has(> w|rPr > w|vanish), text|tracked-changes, office|annotation";

    /** Where RTF says that the rest of a group is deleted, or no part of the page's text. */
    private static final Pattern RTF =
            Pattern.compile("\\\\(?:deleted|annotation|header[lrf]?|footer[lrf]?)(?![a-z0-9])");

    private WithoutChanges() {}

    static Document of(Document document) {
        byte[] bytes = document.bytes();
        if (bytes.length > 4 && bytes[0] == 'P' && bytes[1] == 'K') {
            return new Document(document.name(), document.type(), archive(bytes));
        }
        return document.type().endsWith("/rtf") ? new Document(document.name(), document.type(), rtf(bytes)) : document;
    }

    /** The archive with its text cleaned; as it is where nothing is to clean, or where it is damaged, so that its reader says so. */
    private static byte[] archive(byte[] bytes) {
        try {
            return hasChanges(bytes) ? cleaned(bytes) : bytes;
        } catch (IOException | IllegalArgumentException e) {
            return bytes;
        }
    }

    private static boolean hasChanges(byte[] bytes) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            boolean changed = false;
            for (ZipEntry entry = in.getNextEntry(); entry != null && !changed; entry = in.getNextEntry()) {
                changed = TEXTS.contains(entry.getName())
                        && CHANGED.matcher(text(in)).find();
            }
            return changed;
        }
    }

    private static byte[] cleaned(byte[] bytes) throws IOException {
        ByteArrayOutputStream cleaned = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes));
                ZipOutputStream out = new ZipOutputStream(cleaned)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                if (TEXTS.contains(entry.getName())) {
                    out.write(printed(text(in)).getBytes(StandardCharsets.UTF_8));
                } else {
                    in.transferTo(out);
                }
                out.closeEntry();
            }
        }
        return cleaned.toByteArray();
    }

    private static String text(ZipInputStream in) throws IOException {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }

    private static String printed(String xml) {
        org.jsoup.nodes.Document text = Jsoup.parse(xml, "", Parser.xmlParser());
        text.outputSettings().prettyPrint(false).escapeMode(Entities.EscapeMode.xhtml);
        text.select(UNPRINTED).remove();
        return text.outerHtml();
    }

    private static byte[] rtf(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        StringBuilder kept = new StringBuilder();
        int from = 0;
        for (Matcher mark = RTF.matcher(text); from < text.length() && mark.find(from); ) {
            kept.append(text, from, mark.start());
            from = endOfGroup(text, mark.end());
        }
        return kept.append(text, from, text.length()).toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static int endOfGroup(String text, int from) {
        int depth = 0;
        for (int at = from; at < text.length(); at++) {
            char each = text.charAt(at);
            if (each == '\\') {
                at++; // what follows is a control word or a brace that is text
            } else if (each == '{') {
                depth++;
            } else if (each == '}' && --depth < 0) {
                return at;
            }
        }
        return text.length();
    }
}
