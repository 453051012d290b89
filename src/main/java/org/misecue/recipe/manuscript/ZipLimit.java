package org.misecue.recipe.manuscript;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Word and ODF files are zip archives; this stops one that would unfold to far more than a document. */
final class ZipLimit {

    private static final long MOST_BYTES_OF_XML = 48L << 20;
    private static final int MOST_ENTRIES = 5_000;

    private ZipLimit() {}

    /** @throws org.misecue.notice.BadInput if the archive unfolds to too much */
    static void check(Document document) {
        byte[] bytes = document.bytes();
        if (bytes.length < 4 || bytes[0] != 'P' || bytes[1] != 'K') {
            return;
        }
        long xml = 0;
        int entries = 0;
        byte[] buffer = new byte[1 << 16];
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries++;
                boolean counts =
                        entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
                for (int read = zip.read(buffer); read >= 0; read = zip.read(buffer)) {
                    xml += counts ? read : 0;
                    if (xml > MOST_BYTES_OF_XML || entries > MOST_ENTRIES) {
                        throw document.refuse(
                                "the document unfolds to far more than a recipe has; keep only the recipe in this file.");
                    }
                }
            }
        } catch (IOException | IllegalArgumentException e) {
            // Damaged: the reader of this kind of document says so in its own words.
        }
    }
}
