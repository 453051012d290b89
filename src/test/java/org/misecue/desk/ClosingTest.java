package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A desk that was opened by a click is closed on its page. */
class ClosingTest {

    @TempDir
    Path home;

    @Test
    void a_desk_opened_by_a_click_makes_its_folder_and_is_closed_on_the_page() throws Exception {
        try (DeskProcess process = DeskProcess.at(home)) {
            assertThat(Files.isDirectory(home.resolve("misecue"))).isTrue();
            OpenDesk client = OpenDesk.elsewhere(process.address());
            assertThat(client.enter().get("/new").body()).contains("Open the sample", "Close the desk");

            HttpResponse<String> answer = client.post("/close", Map.of());

            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body()).contains("The desk is closed.");
            assertThat(process.process().waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(process.process().exitValue()).isZero();
        }
    }

    @Test
    void neither_guests_nor_strangers_close_it() {
        try (OpenDesk desk = OpenDesk.withGuests(OpenDesk.sample(home))) {
            OpenDesk guest = desk.stranger();
            assertThat(guest.post("/close", Map.of()).statusCode()).isEqualTo(403);
            guest.post("/join", Map.of("code", desk.codes.get(0)));
            assertThat(guest.get("/e/sample-project/bowls").statusCode()).isEqualTo(200);
            assertThat(guest.post("/close", Map.of()).statusCode()).isEqualTo(403);
        }
    }
}
