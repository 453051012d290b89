package org.misecue.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.channels.ClosedChannelException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.counter.Counter;

class FaultsTest {

    private static final Pattern KEPT = Pattern.compile("Details: ([^<]+\\.txt)");

    @TempDir
    Path folder;

    @Test
    void a_fault_of_ours_is_one_sentence_that_says_where_the_rest_is_kept() throws Exception {
        String page = answer(new IllegalStateException("the whisk broke"));

        assertThat(page)
                .contains("this is a fault of misecue, not of your files")
                .doesNotContain("the whisk broke");
        Matcher kept = KEPT.matcher(page);
        assertThat(kept.find()).isTrue();
        Path details = Path.of(kept.group(1));
        assertThat(details).content().contains("IllegalStateException: the whisk broke");
        Files.delete(details);
    }

    @Test
    void a_connection_that_closed_is_no_fault() throws Exception {
        assertThat(answer(new ClosedChannelException())).doesNotContain("fault");
    }

    /** What is answered where this happens; nothing of it may be seen where the desk was started. */
    private String answer(Exception what) throws IOException, InterruptedException {
        Javalin server = Javalin.create(config -> config.showJavalinBanner = false);
        new Faults().open(server, new Counter(folder, Optional.empty(), Optional::empty));
        server.get("/", request -> {
            throw what;
        });
        PrintStream terminal = System.err;
        ByteArrayOutputStream seen = new ByteArrayOutputStream();
        System.setErr(new PrintStream(seen, true));
        try {
            server.start("127.0.0.1", 0);
            URI address = URI.create("http://127.0.0.1:" + server.port() + "/");
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString())
                    .body();
        } finally {
            server.stop();
            System.setErr(terminal);
            assertThat(seen.toString()).doesNotContain("Exception");
        }
    }
}
