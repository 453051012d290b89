package org.misecue.recipe.manuscript;

import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.tika.Tika;

/** What kind of document a file is. */
final class Kinds {

    static final String MARKDOWN = "text/markdown";
    static final String PLAIN = "text/plain";

    private static final Pattern MARKS_OF_MARKDOWN =
            Pattern.compile("(?m)^(?:#{1,6} \\S.*|\\*\\*[^*\n]+\\*\\*:?\\h*|\\|?\\h*:?-{3,}:?\\h*\\|[-:|\\h]*)$");

    private Kinds() {}

    /** The media type: told from the content, and between kinds of text from the name. */
    static String of(String name, byte[] bytes) {
        String plain = isMarkdownName(name) || looksLikeMarkdown(bytes) ? MARKDOWN : PLAIN;
        // Most recipes are plain files: these are known without waking the detectors.
        if (isPlainName(name) && !new Document(name, plain, bytes).binary() && !looksLikeMarkup(bytes)) {
            return plain;
        }
        String type = new Tika().detect(bytes, name);
        if (type.contains("markdown")) {
            return new Document(name, plain, bytes).binary() ? new Tika().detect(bytes) : MARKDOWN;
        }
        if (type.equals(PLAIN) && new Document(name, plain, bytes).binary()) {
            return "application/octet-stream";
        }
        return type.equals(PLAIN) ? plain : type;
    }

    static boolean isPlainName(String name) {
        return isMarkdownName(name)
                || lower(name).endsWith(".txt")
                || lower(name).endsWith(".text");
    }

    /** A type in words for a complaint. */
    static String inWords(String type) {
        if (type.startsWith("image/")) {
            return "a picture (" + type + ")";
        }
        if (type.startsWith("video/") || type.startsWith("audio/")) {
            return "a recording (" + type + ")";
        }
        return type.equals("application/octet-stream") ? "a file of an unknown kind" : "a file of the kind " + type;
    }

    private static boolean isMarkdownName(String name) {
        return lower(name).endsWith(".md") || lower(name).endsWith(".markdown");
    }

    /** Headings with #, a line that is bold as a whole, or the rule of a table: nobody writes these by chance. */
    private static boolean looksLikeMarkdown(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 8192), java.nio.charset.StandardCharsets.ISO_8859_1);
        return MARKS_OF_MARKDOWN.matcher(start).find();
    }

    private static boolean looksLikeMarkup(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 512), java.nio.charset.StandardCharsets.ISO_8859_1)
                .stripLeading();
        return start.startsWith("<!")
                || start.startsWith("<html")
                || start.startsWith("<?xml")
                || start.startsWith("{\\rtf")
                || start.startsWith("%PDF");
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
