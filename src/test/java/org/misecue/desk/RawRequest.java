package org.misecue.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.SocketException;

/** A request as no well-behaved client would send it. */
public final class RawRequest {

    private RawRequest() {}

    /** @return all that comes back until the desk hangs up, or what came until then */
    public static String send(int port, String text) {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(text.getBytes(ISO_8859_1));
            socket.getOutputStream().flush();
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), ISO_8859_1);
        } catch (SocketException e) {
            return "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The status in the first line; 0 where the desk just hung up. */
    public static int status(String answer) {
        return answer.startsWith("HTTP/1.1 ") ? Integer.parseInt(answer.substring(9, 12)) : 0;
    }
}
