package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who comes in, and who does not. */
class DoorTest {

    private static final String PULSE = "/e/sample-project/pulse";

    @TempDir
    Path temp;

    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open() {
        desk = OpenDesk.over(OpenDesk.sample(temp));
    }

    @AfterEach
    void and_closed() {
        desk.close();
    }

    private String key() {
        return desk.address().substring(desk.address().indexOf('=') + 1);
    }

    private int status(String method, String path, String... headers) {
        String text =
                method + " " + path + " HTTP/1.1\r\nConnection: close\r\n" + String.join("\r\n", headers) + "\r\n\r\n";
        return RawRequest.status(RawRequest.send(desk.port(), text));
    }

    private String host() {
        return "Host: 127.0.0.1:" + desk.port();
    }

    private String cookie() {
        return "Cookie: misecue-" + desk.port() + "=" + key();
    }

    @Test
    void the_printed_address_lets_the_owner_in_and_leaves_no_key_in_the_address() {
        HttpResponse<String> first = desk.get("/?key=" + key());
        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(first.headers().firstValue("Location")).contains("/");
        assertThat(first.headers().firstValue("Set-Cookie").orElseThrow())
                .contains("HttpOnly", "SameSite=Strict")
                .doesNotContain("Domain=");
        assertThat(desk.get(PULSE).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/", "/e/sample-project", PULSE, "/?key=", "/?key=wrong", "/?key=%00", PULSE + "?key=wrong"})
    void without_the_key_nothing_is_shown(String path) {
        HttpResponse<String> answer = desk.get(path);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).doesNotContainIgnoringCase("plum");
    }

    @Test
    void a_key_in_the_address_of_another_page_opens_nothing() {
        assertThat(desk.get(PULSE + "?key=" + key()).statusCode()).isEqualTo(403);
    }

    @Test
    void the_key_of_another_desk_opens_nothing() {
        try (OpenDesk other = OpenDesk.over(temp)) {
            String theirs = other.address().substring(other.address().indexOf('=') + 1);
            assertThat(desk.get("/?key=" + theirs).statusCode()).isEqualTo(403);
            assertThat(status("GET", PULSE, host(), "Cookie: misecue-" + desk.port() + "=" + theirs))
                    .isEqualTo(403);
        }
    }

    @Test
    void each_desk_has_a_key_of_its_own_that_nobody_guesses() {
        try (OpenDesk other = OpenDesk.over(temp)) {
            assertThat(other.address()).doesNotContain(key());
        }
        assertThat(key()).hasSizeGreaterThanOrEqualTo(32).matches("[A-Za-z0-9_-]+");
    }

    /** A foreign name may be made to lead to this machine, so that a page of that name could ask as its own. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "buns.example",
                "buns.example:4000",
                "127.0.0.1",
                "127.0.0.1.buns.example",
                "192.168.0.7",
                "0.0.0.0",
                ""
            })
    void a_foreign_name_is_refused_even_with_the_key(String name) {
        assertThat(status("GET", PULSE, "Host: " + name, cookie()))
                .isBetween(400, 421)
                .isNotEqualTo(403);
    }

    @Test
    void two_names_or_none_are_refused() {
        assertThat(status("GET", PULSE, cookie())).isEqualTo(400);
        assertThat(status("GET", PULSE, host(), "Host: buns.example", cookie())).isEqualTo(400);
        assertThat(status("GET", "http://buns.example" + PULSE, host(), cookie()))
                .isIn(400, 421);
    }

    @ParameterizedTest
    @CsvSource({"localhost", "127.0.0.1", "[::1]", "LOCALHOST"})
    void its_own_names_are_known(String name) {
        assertThat(status("GET", PULSE, "Host: " + name + ":" + desk.port(), cookie()))
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://buns.example",
                "null",
                "https://127.0.0.1",
                "http://127.0.0.1:1",
                "file://",
                "http://localhost"
            })
    void a_page_from_elsewhere_reads_and_changes_nothing(String origin) {
        assertThat(status("GET", PULSE, host(), cookie(), "Origin: " + origin)).isEqualTo(403);
        assertThat(status("POST", "/join", host(), cookie(), "Origin: " + origin, "Content-Length: 0"))
                .isEqualTo(403);
    }

    @Test
    void a_change_must_say_where_it_comes_from() {
        assertThat(status("POST", "/join", host(), cookie(), "Content-Length: 0"))
                .isEqualTo(403);
        assertThat(status("DELETE", "/join", host(), cookie())).isEqualTo(403);
        assertThat(status("PUT", "/join", host(), cookie(), "Content-Length: 0"))
                .isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({"cross-site,403", "same-site,403", "same-origin,200", "none,200"})
    void what_browsers_say_of_the_asking_page_counts(String site, int status) {
        assertThat(status("GET", PULSE, host(), cookie(), "Sec-Fetch-Site: " + site))
                .isEqualTo(status);
    }

    @Test
    void the_printed_address_may_be_followed_from_a_message() {
        assertThat(status("GET", "/?key=" + key(), host(), "Sec-Fetch-Site: cross-site"))
                .isEqualTo(303);
        assertThat(status("GET", "/?key=wrong", host(), "Sec-Fetch-Site: cross-site"))
                .isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/assets/desk.css", "/assets/nothing.css", "/nothing", "/?key=wrong"})
    void every_answer_keeps_scripts_frames_and_guesses_out(String path) {
        Map<String, List<String>> headers = desk.get(path).headers().map();
        assertThat(headers.get("content-security-policy").get(0))
                .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(headers).containsEntry("x-content-type-options", List.of("nosniff"));
        assertThat(headers).containsEntry("referrer-policy", List.of("same-origin"));
        assertThat(headers).doesNotContainKeys("access-control-allow-origin", "server");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/assets/..%2f..%2fcli%2fversion.txt",
                "/assets/../worktop/version.txt",
                "/assets/%2e%2e/worktop/version.txt",
                "/assets/desk.css%00",
                "/assets/.css",
                "/e/..%2fsample-project/pulse",
                "/e/../pulse",
                "/e/%2e%2e/pulse",
                "/e/sample-project%00/pulse",
                "/e/.misecue/pulse"
            })
    void no_name_leads_out_of_its_place(String path) {
        int status = status("GET", path, host(), cookie());
        assertThat(status).isIn(400, 403, 404);
    }

    @Test
    void a_post_that_is_too_large_is_cut_off() {
        desk.enter();
        HttpResponse<String> answer = desk.send(desk.request("/join")
                .header("Origin", desk.origin())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("code=" + "x".repeat(2_000_000))));
        assertThat(answer.statusCode()).isIn(404, 413);
        assertThat(desk.get(PULSE).statusCode()).isEqualTo(200);
    }

    @Test
    void headers_without_end_are_cut_off() {
        assertThat(status("GET", "/", host(), "X-Long: " + "x".repeat(100_000))).isEqualTo(431);
        assertThat(status("GET", "/" + "x".repeat(100_000), host())).isEqualTo(414);
    }

    @Test
    void nonsense_hurts_nobody() {
        for (String text :
                List.of("", "\0\0\0\0", "GET", "GET / HTTP/9.9\r\n\r\n", "\r\n\r\n\r\n", "PRI * HTTP/2.0\r\n\r\n")) {
            assertThat(RawRequest.status(RawRequest.send(desk.port(), text)))
                    .isNotEqualTo(200)
                    .isLessThan(600);
        }
        assertThat(desk.enter().get(PULSE).statusCode()).isEqualTo(200);
    }

    @Test
    void guests_are_not_let_in_unless_that_was_wished() {
        assertThat(desk.get("/join").statusCode()).isEqualTo(404);
        assertThat(desk.post("/join", Map.of("code", "")).statusCode()).isEqualTo(404);
    }
}
