package org.misecue.recipe.manuscript;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Reads a document of any kind as lines. The kind is told from the content first, from the file's name second. */
public final class Manuscripts {

    /** A recipe is a few pages; more is some other file. */
    static final long MOST_BYTES_OF_TEXT = 20L * 1024 * 1024;
    /** Documents may hold photographs. */
    static final long MOST_BYTES = 100L * 1024 * 1024;

    /** A long recipe has some hundred lines, and a long step some thousand letters. */
    private static final int MOST_LINES = 5_000;

    private static final int LONGEST_LINE = 20_000;

    private static final List<ManuscriptReader> READERS = List.of(
            new MarkdownManuscript(),
            new WebPageManuscript(),
            new PdfManuscript(),
            new OfficeManuscript(),
            new MailManuscript(),
            new PlainTextManuscript());

    private Manuscripts() {}

    /**
     * The lines of a document.
     *
     * @param name what the user calls the file; it stands in every complaint
     * @throws BadInput if the file is missing, empty, too large, encrypted, or no document with text
     */
    public static Manuscript read(Path file, String name) {
        Document document = open(file, name);
        for (ManuscriptReader reader : READERS) {
            if (reader.takes(document.type())) {
                Manuscript manuscript = read(reader, document);
                if (manuscript.lines().isEmpty()) {
                    throw document.refuse(
                            "there is no text in this file; give the recipe as text, Markdown, Word, ODF, RTF, HTML or PDF.");
                }
                if (manuscript.lines().size() > MOST_LINES
                        || manuscript.lines().stream()
                                .anyMatch(line -> line.text().length() > LONGEST_LINE)) {
                    throw document.tooLong();
                }
                return manuscript;
            }
        }
        if (document.type().equals(Kinds.MAILBOX_MESSAGE)) {
            throw document.refuse(
                    "this is a message in a mail program's own format; open it there and save it as text or as .eml.");
        }
        throw document.refuse("this is no text but %s; give the recipe as text, Markdown, Word, ODF, RTF, HTML or PDF."
                .formatted(Kinds.inWords(document.type())));
    }

    private static Manuscript read(ManuscriptReader reader, Document document) {
        try {
            return TimeLimit.within(TimeLimit.LONGEST, document, () -> reader.read(document));
        } catch (StackOverflowError e) {
            // The parsers of Markdown and XML walk into lists within lists for as long as there are any.
            throw document.refuse(
                    "lists, quotes or marks lie too deep within each other; paste the recipe into a plain text file.",
                    e);
        }
    }

    private static Document open(Path file, String name) {
        try {
            if (Files.isDirectory(file)) {
                throw new BadInput(Place.of(name), "this is a folder; name the recipe's file in it.");
            }
            if (!Files.isRegularFile(file)) {
                throw new BadInput(Place.of(name), "there is no such file; check the name.");
            }
            long size = Files.size(file);
            limit(name, size, Kinds.isPlainName(name) ? MOST_BYTES_OF_TEXT : MOST_BYTES);
            byte[] bytes = Files.readAllBytes(file);
            if (bytes.length == 0) {
                throw new BadInput(Place.of(name), "the file is empty; write or paste the recipe into it.");
            }
            ZipLimit.check(new Document(name, "application/zip", bytes));
            String type = Kinds.of(name, bytes);
            limit(name, size, type.startsWith("text/") ? MOST_BYTES_OF_TEXT : MOST_BYTES);
            return new Document(name, type, bytes);
        } catch (IOException e) {
            throw new BadInput(Place.of(name), "the file cannot be read; check that it exists and may be opened.", e);
        }
    }

    private static void limit(String name, long size, long most) {
        if (size > most) {
            throw new BadInput(
                    Place.of(name),
                    String.format(
                            Locale.ROOT,
                            "%.0f MB is too much for a recipe, of which %d MB are read; keep only the recipe in this file.",
                            size / 1048576.0,
                            most / 1048576));
        }
    }
}
