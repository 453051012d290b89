package org.misecue.recipe.manuscript;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.tika.Tika;

/** What kind of document a file is. */
final class Kinds {

    static final String MARKDOWN = "text/markdown";
    static final String PLAIN = "text/plain";
    static final String MAIL = "message/rfc822";
    /** What ends in .msg. */
    static final String MAILBOX_MESSAGE = "application/vnd.ms-outlook";

    private static final Pattern MARKS_OF_MARKDOWN =
            Pattern.compile("(?m)^(?:#{1,6} \\S.*|\\*\\*[^*\n]+\\*\\*:?\\h*|\\|?\\h*:?-{3,}:?\\h*\\|[-:|\\h]*)$");

    private static final Pattern MAIL_FIELD = Pattern.compile("(?:From )?[A-Za-z][A-Za-z-]*(?::|\\h\\S+@)");
    private static final Pattern HEAD_OF_MAIL =
            Pattern.compile("(?mi)^(?:MIME-Version:|Content-Type:\\h*(?:text|multipart)/)");

    private Kinds() {}

    /** The media type: told from the content, and between kinds of text from the name. */
    static String of(String name, byte[] bytes) {
        if (looksLikeMail(name, bytes)) {
            return MAIL;
        }
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

    /** A mail as programs send it names the version of its form; one that was pasted does not. */
    private static boolean looksLikeMail(String name, byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 65536), StandardCharsets.ISO_8859_1);
        return MAIL_FIELD.matcher(start).lookingAt()
                && (lower(name).endsWith(".eml")
                        || HEAD_OF_MAIL
                                .matcher(start.split("\\r?\\n\\r?\\n", 2)[0])
                                .find());
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
