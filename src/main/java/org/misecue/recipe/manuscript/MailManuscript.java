package org.misecue.recipe.manuscript;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.james.mime4j.stream.MimeConfig;
import org.jsoup.Jsoup;
import org.misecue.notice.BadInput;

/**
 * A saved mail: its plain text, else its page. Attachments are not opened. Its lines are those of the message, not of the
 * file, where they may be coded.
 */
final class MailManuscript implements ManuscriptReader {

    private static final Pattern ANSWERED = Pattern.compile("^(?:(?:Re|Fwd?|AW|WG):\\h*)++", Pattern.CASE_INSENSITIVE);
    /** Mails lie in mails, and parts in parts, when they are forwarded. */
    private static final int DEEPEST = 20;
    /** A mail has some parts; each takes kilobytes of memory. */
    private static final int MOST_RULES = 2_000;

    @Override
    public boolean takes(String type) {
        return type.equals(Kinds.MAIL);
    }

    @Override
    public Manuscript read(Document document) {
        Message mail = parsed(document);
        try {
            List<Line> lines = new ArrayList<>();
            String subject = Optional.ofNullable(mail.getSubject()).orElse("").strip();
            if (!subject.isEmpty()) {
                lines.add(Line.heading(0, 1, ANSWERED.matcher(subject).replaceFirst("")));
            }
            lines.addAll(body(document, mail));
            return new Manuscript("", lines);
        } finally {
            mail.dispose();
        }
    }

    private static Message parsed(Document document) {
        if (ruled(document.bytes()) > MOST_RULES) {
            throw document.tooLong();
        }
        DefaultMessageBuilder builder = new DefaultMessageBuilder();
        builder.setMimeEntityConfig(
                MimeConfig.custom().setMaxLineLen(-1).setMaxHeaderLen(100_000).build());
        try {
            return builder.parseMessage(new ByteArrayInputStream(document.bytes()));
        } catch (IOException | RuntimeException e) {
            throw document.damaged(e);
        }
    }

    /** How many lines begin as those between the parts of a mail do. */
    private static int ruled(byte[] bytes) {
        int rules = 0;
        for (int at = 0; at + 2 < bytes.length; at++) {
            rules += bytes[at] == '\n' && bytes[at + 1] == '-' && bytes[at + 2] == '-' ? 1 : 0;
        }
        return rules;
    }

    private static List<Line> body(Document document, Entity mail) {
        Optional<Entity> plain = parts(mail, 0)
                .filter(part -> part.getMimeType().equals("text/plain"))
                .filter(part -> !text(document, part).isBlank())
                .findFirst();
        if (plain.isPresent()) {
            return PdfManuscript.lines(flowed(plain.get(), text(document, plain.get())));
        }
        Entity page = parts(mail, 0)
                .filter(part -> part.getMimeType().equals("text/html"))
                .findFirst()
                .orElseThrow(
                        () -> document.refuse(
                                "there is no text in this mail; save its attachment as a file, or paste the recipe into a text file."));
        return WebPageManuscript.shown(Jsoup.parse(text(document, page)).body()).lines().stream()
                .takeWhile(line -> !line.text().equals("--"))
                .toList();
    }

    /** The parts that hold text and are no attachments, in order. */
    private static Stream<Entity> parts(Entity entity, int depth) {
        if (depth > DEEPEST || "attachment".equalsIgnoreCase(entity.getDispositionType())) {
            return Stream.empty();
        }
        if (entity.getBody() instanceof Multipart several) {
            return several.getBodyParts().stream().flatMap(part -> parts(part, depth + 1));
        }
        if (entity.getBody() instanceof Message forwarded) {
            return parts(forwarded, depth + 1);
        }
        return entity.getBody() instanceof TextBody ? Stream.of(entity) : Stream.empty();
    }

    private static String text(Document document, Entity part) {
        TextBody body = (TextBody) part.getBody();
        try {
            byte[] bytes = body.getInputStream().readAllBytes();
            Charset named = Charset.forName(body.getMimeCharset());
            // Mails that name no letters, or the fewest, often have more of them.
            return named.equals(StandardCharsets.US_ASCII) || named.equals(StandardCharsets.UTF_8)
                    ? new Document(document.name(), Kinds.PLAIN, bytes).recipeText()
                    : new String(bytes, named);
        } catch (BadInput e) {
            throw e;
        } catch (IOException | IllegalArgumentException e) {
            throw document.damaged(e);
        }
    }

    /** Text that may be broken anew at each window's edge: a line that ends in a blank goes on (RFC 3676). */
    private static String flowed(Entity part, String text) {
        boolean flowed = part.getHeader() != null
                && Optional.ofNullable(part.getHeader().getField("Content-Type"))
                        .filter(field ->
                                field.getBody().toLowerCase(Locale.ROOT).matches("(?s).*format\\h*=\\h*\"?flowed.*"))
                        .isPresent();
        if (!flowed) {
            return text;
        }
        StringBuilder whole = new StringBuilder();
        boolean goesOn = false;
        for (String line : text.lines().toList()) {
            String said = line.replaceFirst("^(?:>\\h?)++", "").replaceFirst("^ (?=\\S)", "");
            whole.append(goesOn && !said.equals("-- ") ? "" : whole.length() == 0 ? "" : "\n")
                    .append(said);
            goesOn = said.endsWith(" ") && !said.equals("-- ");
        }
        return whole.toString();
    }
}
