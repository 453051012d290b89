package org.misecue.recipe;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;

/** Documents that no kitchen needs. */
final class HostileDocuments {

    private HostileDocuments() {}

    static Path megabytes(Path file, int megabytes, String line) throws IOException {
        byte[] block = line.repeat((1 << 20) / line.length()).getBytes(StandardCharsets.UTF_8);
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int at = 0; at < megabytes; at++) {
                out.write(block);
            }
        }
        return file;
    }

    static Path hole(Path file, long bytes) throws IOException {
        try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
            out.setLength(bytes);
        }
        return file;
    }

    static Path bombOdt(Path file) throws IOException {
        byte[] block = "a".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            Documents.odtParts(zip);
            zip.putNextEntry(new ZipEntry("content.xml"));
            zip.write("<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\">"
                    .getBytes(StandardCharsets.US_ASCII));
            for (int at = 0; at < 300; at++) {
                zip.write(block);
            }
            zip.closeEntry();
        }
        return file;
    }

    /** A picture of a page, as a scanner makes it. */
    static Path scan(Path file) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            var picture = new java.awt.image.BufferedImage(200, 300, java.awt.image.BufferedImage.TYPE_BYTE_GRAY);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawImage(LosslessFactory.createFromImage(document, picture), 0, 0, 600, 800);
            }
            document.save(file.toFile());
        }
        return file;
    }

    static Path pages(Path file, int pages) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (int at = 0; at < pages; at++) {
                document.addPage(new PDPage());
            }
            document.save(file.toFile());
        }
        return file;
    }

    /** A tree of pages that holds itself. */
    static Path loop(Path file) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            var tree = document.getPages().getCOSObject();
            COSArray kids = (COSArray) tree.getDictionaryObject(COSName.KIDS);
            kids.add(document.getDocumentCatalog().getCOSObject().getItem(COSName.PAGES));
            tree.setInt(COSName.COUNT, 1_000_000);
            document.save(bytes);
        }
        return Files.write(file, bytes.toByteArray());
    }
}
