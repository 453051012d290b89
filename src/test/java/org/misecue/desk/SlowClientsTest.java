package org.misecue.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clients that stop in the middle of a sentence keep nobody else waiting. */
class SlowClientsTest {

    @TempDir
    Path temp;

    private final List<Socket> slow = new ArrayList<>();
    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open() {
        desk = OpenDesk.withGuests(OpenDesk.sample(temp)).enter();
    }

    @AfterEach
    void and_closed() throws IOException {
        for (Socket socket : slow) {
            socket.close();
        }
        desk.close();
    }

    private void say(int times, String words) throws IOException {
        for (int i = 0; i < times; i++) {
            Socket socket = new Socket("127.0.0.1", desk.port());
            socket.getOutputStream().write(words.getBytes(ISO_8859_1));
            socket.getOutputStream().flush();
            slow.add(socket);
        }
    }

    private void assertServed() {
        for (int i = 0; i < 5; i++) {
            assertThat(desk.get("/e/sample-project/pulse").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void that_never_end_their_headers() throws IOException {
        say(200, "GET / HTTP/1.1\r\nHost: 127.0.0.1:" + desk.port() + "\r\nX-More: ");
        assertServed();
    }

    @Test
    void that_never_send_what_they_announced() throws IOException {
        String post = "POST /join HTTP/1.1\r\nHost: 127.0.0.1:%1$d\r\nOrigin: http://127.0.0.1:%1$d\r\n"
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 100\r\n\r\ncode=";
        say(100, post.formatted(desk.port()));
        assertServed();
    }

    @Test
    void that_say_nothing_at_all() throws IOException {
        say(200, "");
        assertServed();
    }
}
