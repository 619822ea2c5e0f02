package benchtwin.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Bytes over a connection, for what no client library would send. */
final class Wire {

    private static final int PATIENCE_MS = 10_000;

    private Wire() {
    }

    /** Sends lines as they are, and closes the sending side; gives back all that was answered. */
    static String send(int port, String... lines) {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.getOutputStream().write((String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
