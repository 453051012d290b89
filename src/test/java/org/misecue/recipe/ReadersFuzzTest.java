package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.misecue.notice.BadInput;

/**
 * A good recipe of each kind of document, changed here and there by the fuzzer: a recipe comes out, or one sentence that
 * says what is wrong, within seconds.
 */
class ReadersFuzzTest {

    private static final long MOST_NANOS = 10_000_000_000L;

    @FuzzTest
    void markdown(FuzzedDataProvider data) throws IOException {
        read("md", Splices.in(FuzzSeeds.MARKDOWN, data, FuzzSeeds.MARKDOWN_WORDS));
    }

    @FuzzTest
    void text(FuzzedDataProvider data) throws IOException {
        read("txt", Splices.in(FuzzSeeds.TEXT, data, FuzzSeeds.TEXT_WORDS));
    }

    @FuzzTest
    void html(FuzzedDataProvider data) throws IOException {
        read("html", Splices.in(FuzzSeeds.HTML, data, FuzzSeeds.HTML_WORDS));
    }

    @FuzzTest
    void json(FuzzedDataProvider data) throws IOException {
        String json = Splices.in(FuzzSeeds.JSON, data, FuzzSeeds.JSON_WORDS);
        read("html", "<html><script type=\"application/ld+json\">" + json + "</script>");
    }

    @FuzzTest
    void docx(FuzzedDataProvider data) throws IOException {
        read("docx", FuzzSeeds.docx(Splices.in(FuzzSeeds.DOCX, data, FuzzSeeds.DOCX_WORDS)));
    }

    @FuzzTest
    void odt(FuzzedDataProvider data) throws IOException {
        read("odt", FuzzSeeds.odt(Splices.in(FuzzSeeds.ODT, data, FuzzSeeds.ODT_WORDS)));
    }

    @FuzzTest
    void rtf(FuzzedDataProvider data) throws IOException {
        read("rtf", Splices.in(FuzzSeeds.RTF, data, FuzzSeeds.RTF_WORDS));
    }

    @FuzzTest
    void pdf(FuzzedDataProvider data) throws IOException {
        String pdf = Splices.in(FuzzSeeds.pdf(), data, FuzzSeeds.PDF_WORDS);
        read("pdf", pdf.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static void read(String kind, String text) throws IOException {
        read(kind, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void read(String kind, byte[] bytes) throws IOException {
        Path file = Files.createTempFile("fuzz", "." + kind);
        long start = cpu();
        try {
            Files.write(file, bytes);
            Recipe recipe = RecipeReader.read(file, "r");
            assertThat(RecipeText.of(recipe)).endsWith("\n");
            assertThat(RecipeJson.of(recipe)).startsWith("{");
        } catch (BadInput refused) {
            assertThat(refused)
                    .hasMessageStartingWith("r: ")
                    .hasMessageEndingWith(".")
                    .message()
                    .doesNotContain("\n");
        } finally {
            Files.delete(file);
        }
        assertThat(cpu() - start).as("nanoseconds of work").isLessThan(MOST_NANOS);
    }

    /** Work, not waiting: the machine may be busy. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
