package org.misecue.desk.media;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.desk.RawRequest;

/** Films over HTTP; what is in them does not matter here. */
class ServedTest {

    private static final String FILM = FilmDesk.MEDIA + "take%201%20100%25.mp4";
    private static final int SIZE = 3_000_017;
    private static final String CHANGED = "Mon, 02 Mar 2026 10:00:00 GMT";

    @TempDir
    static Path temp;

    private static final byte[] CONTENT = new byte[SIZE];
    private static FilmDesk films;
    private static String tag;

    @BeforeAll
    static void a_desk_is_open() throws IOException {
        new Random(5).nextBytes(CONTENT);
        films = new FilmDesk(temp);
        Path film = Files.write(films.footage().resolve("take 1 100%.mp4"), CONTENT);
        Files.setLastModifiedTime(film, FileTime.from(Instant.parse("2026-03-02T10:00:00.250Z")));
        tag = films.bytes(FILM).headers().firstValue("ETag").orElseThrow();
    }

    @AfterAll
    static void and_closed() {
        films.close();
    }

    private static byte[] part(int first, int last) {
        return Arrays.copyOfRange(CONTENT, first, last + 1);
    }

    private static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    @Test
    void the_whole_film_is_given_with_all_that_a_player_wants_to_know() {
        HttpResponse<byte[]> answer = films.bytes(FILM);

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo(CONTENT);
        assertThat(header(answer, "Content-Type")).isEqualTo("video/mp4");
        assertThat(header(answer, "Content-Length")).isEqualTo(String.valueOf(SIZE));
        assertThat(header(answer, "Accept-Ranges")).isEqualTo("bytes");
        assertThat(header(answer, "Last-Modified")).isEqualTo(CHANGED);
        assertThat(tag).matches("\"[0-9a-f-]+\"");
        assertThat(header(answer, "Content-Encoding")).isEmpty();
    }

    @Test
    void a_thousand_ranges_have_the_bytes_of_the_file() {
        Random random = new Random(11);
        for (int i = 0; i < 1000; i++) {
            int first = random.nextInt(SIZE);
            int length = 1 + random.nextInt(i % 50 == 0 ? 200_000 : 5_000);
            int last = Math.min(SIZE - 1, first + length - 1);
            String range =
                    i % 7 == 0 ? "-" + (SIZE - first) : i % 11 == 0 ? first + "-" : first + "-" + (first + length - 1);
            int end = i % 7 == 0 || i % 11 == 0 ? SIZE - 1 : last;
            HttpResponse<byte[]> answer = films.bytes(FILM, "Range", "bytes=" + range);
            assertThat(answer.statusCode()).isEqualTo(206);
            assertThat(header(answer, "Content-Range")).isEqualTo("bytes " + first + "-" + end + "/" + SIZE);
            assertThat(Arrays.equals(answer.body(), part(first, end))).as(range).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bytes=3000017-", "bytes=-0", "bytes=99999999999999999999-"})
    void a_range_beyond_the_end_is_refused_with_the_size(String range) {
        HttpResponse<byte[]> answer = films.bytes(FILM, "Range", range);

        assertThat(answer.statusCode()).isEqualTo(416);
        assertThat(header(answer, "Content-Range")).isEqualTo("bytes */" + SIZE);
    }

    @Test
    void scattered_ranges_give_the_whole_and_touching_ones_one_part() {
        assertThat(films.bytes(FILM, "Range", "bytes=0-1,10-11").statusCode()).isEqualTo(200);
        assertThat(films.bytes(FILM, "Range", "bytes=0-4,5-9").body()).isEqualTo(part(0, 9));
        assertThat(films.bytes(FILM, "Range", "bytes=0-1", "Range", "bytes=4-5").statusCode())
                .isEqualTo(200);
    }

    @Test
    void asking_for_the_head_gives_the_head_alone() {
        HttpResponse<byte[]> answer = films.bytes(
                films.desk.request(FILM, "Range", "bytes=0-1").method("HEAD", HttpRequest.BodyPublishers.noBody()));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEmpty();
        assertThat(header(answer, "Content-Length")).isEqualTo(String.valueOf(SIZE));
        assertThat(header(answer, "ETag")).isEqualTo(tag);
    }

    /** RFC 9110, 13.1 and 13.2.2; TAG stands for the file's own. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            If-Range            | TAG                           | 206
            If-Range            | "other"                       | 200
            If-Range            | W/TAG                         | 200
            If-Range            | Mon, 02 Mar 2026 10:00:00 GMT | 206
            If-Range            | Mon, 02 Mar 2026 10:00:01 GMT | 200
            If-Range            | nonsense                      | 200
            If-None-Match       | TAG                           | 304
            If-None-Match       | W/TAG                         | 304
            If-None-Match       | "other", TAG                  | 304
            If-None-Match       | *                             | 304
            If-None-Match       | "other"                       | 206
            If-Match            | TAG                           | 206
            If-Match            | *                             | 206
            If-Match            | "other"                       | 412
            If-Match            | W/TAG                         | 412
            If-Modified-Since   | Mon, 02 Mar 2026 10:00:00 GMT | 304
            If-Modified-Since   | Mon, 02 Mar 2026 09:59:59 GMT | 206
            If-Modified-Since   | nonsense                      | 206
            If-Unmodified-Since | Mon, 02 Mar 2026 10:00:00 GMT | 206
            If-Unmodified-Since | Mon, 02 Mar 2026 09:59:59 GMT | 412
            """)
    void conditions_hold_as_the_rfc_has_them(String name, String value, int status) {
        String header = value.replace("TAG", tag);

        assertThat(films.bytes(FILM, "Range", "bytes=0-9", name, header).statusCode())
                .isEqualTo(status);
    }

    @Test
    void a_film_that_is_replaced_has_another_tag() throws IOException {
        Path film = films.footage().resolve("other.mp4");
        Files.write(film, new byte[100]);
        String before = header(films.bytes(FilmDesk.MEDIA + "other.mp4"), "ETag");
        Files.write(film, new byte[101]);

        assertThat(header(
                        films.bytes(FilmDesk.MEDIA + "other.mp4", "Range", "bytes=0-4", "If-Range", before),
                        "Content-Length"))
                .isEqualTo("101");
        Files.delete(film);
        assertThat(films.bytes(FilmDesk.MEDIA + "other.mp4").statusCode()).isEqualTo(404);
    }

    @Test
    void an_empty_file_is_empty() throws IOException {
        Files.write(films.footage().resolve("empty.mov"), new byte[0]);

        assertThat(films.bytes(FilmDesk.MEDIA + "empty.mov").statusCode()).isEqualTo(200);
        assertThat(films.bytes(FilmDesk.MEDIA + "empty.mov", "Range", "bytes=0-")
                        .statusCode())
                .isEqualTo(416);
    }

    private static String raw(String path, String... headers) {
        String key = films.desk.address().substring(films.desk.address().indexOf('=') + 1);
        return "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + films.desk.port() + "\r\nCookie: misecue-"
                + films.desk.port() + "=" + key + "\r\n" + String.join("", headers) + "\r\n";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "..%2f..%2frecipe.md",
                "..%2frecipe.md",
                "..%5crecipe.md",
                "%2e%2e/recipe.md",
                "../recipe.md",
                "..;/recipe.md",
                "%2fetc%2fpasswd",
                "//etc/passwd",
                "file:%2f%2f%2fetc%2fpasswd",
                "take%201%20100%25.mp4%00",
                "take%201%20100%25.mp4%00.png",
                "take%201%20100%25.mp4%2f",
                "take 1",
                ".",
                "..",
                "%",
                "%zz",
                "%c0%ae%c0%ae%c0%afrecipe.md",
                ".hidden.mp4",
                "recipe.md",
                "note.txt"
            })
    void no_name_leads_out_of_its_folder(String name) throws IOException {
        Files.writeString(films.footage().resolve("note.txt"), "rolling pins");
        Files.writeString(films.footage().resolve(".hidden.mp4"), "half a film");
        for (String place : List.of("media/", "made/stills/", "made/clips/")) {
            String answer = RawRequest.send(films.desk.port(), raw("/e/buns/" + place + name, "Connection: close\r\n"));
            assertThat(RawRequest.status(answer)).as(place).isIn(400, 404);
            assertThat(answer).doesNotContain("200 g flour", "root:", "half a film", "rolling pins");
        }
    }

    @Test
    void a_link_that_leads_out_of_the_episode_is_not_followed() throws IOException {
        Path secret = Files.writeString(temp.resolve("secret.mp4"), "secret");
        Path link = Files.createSymbolicLink(films.footage().resolve("linked.mp4"), secret);
        Path stills = Files.createDirectories(films.folder.resolve("out/stills"));
        Files.createSymbolicLink(stills.resolve("linked.png"), secret);
        Path within = Files.createSymbolicLink(films.footage().resolve("within.mp4"), Path.of("take 1 100%.mp4"));

        assertThat(films.desk.get(FilmDesk.MEDIA + "linked.mp4").statusCode()).isEqualTo(403);
        assertThat(films.desk.get("/e/buns/made/stills/linked.png").statusCode())
                .isEqualTo(403);
        assertThat(films.desk.get("/e/buns/media").body()).doesNotContain("\"src\":\"/e/buns/media/linked.mp4");
        assertThat(films.bytes(FilmDesk.MEDIA + "within.mp4").body()).isEqualTo(CONTENT);
        Files.delete(link);
        Files.delete(within);
    }

    @Test
    void whoever_has_no_key_gets_no_film() {
        assertThat(films.desk.stranger().get(FILM).statusCode()).isEqualTo(403);
        assertThat(films.desk.get(FILM, "Sec-Fetch-Site", "cross-site").statusCode())
                .isEqualTo(403);
    }

    @Test
    void many_who_do_not_read_on_keep_nobody_waiting() throws IOException {
        int threads = busyThreads();
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 150; i++) {
                Socket socket = new Socket();
                socket.setReceiveBufferSize(4096);
                socket.connect(new java.net.InetSocketAddress("127.0.0.1", films.desk.port()));
                socket.getOutputStream().write(raw(FILM).getBytes(ISO_8859_1));
                socket.getOutputStream().flush();
                slow.add(socket);
            }
            for (Socket socket : slow) {
                assertThat(socket.getInputStream().read()).isEqualTo('H');
            }
            assertThat(films.bytes(FILM, "Range", "bytes=0-9").body()).isEqualTo(part(0, 9));
            assertThat(busyThreads()).isLessThan(threads + 20);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    /** Threads of the desk that stand in an answer. */
    private static int busyThreads() {
        return (int) Thread.getAllStackTraces().values().stream()
                .filter(stack -> Arrays.stream(stack)
                        .anyMatch(frame -> frame.getClassName().startsWith("io.javalin.jetty")
                                || frame.getClassName().equals(Served.class.getName())))
                .count();
    }
}
