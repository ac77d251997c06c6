package dev.underprop.app.http;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A bare connection, for what no HTTP client would send. */
final class Wire implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 20_000;

    private final Socket socket;

    Wire(int port) throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setSoTimeout(PATIENCE_MILLIS);
    }

    /** How long to wait for what comes back (ms). */
    void patience(int millis) throws IOException {
        socket.setSoTimeout(millis);
    }

    Wire send(String text) throws IOException {
        return send(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    Wire send(byte[] bytes) throws IOException {
        OutputStream out = socket.getOutputStream();
        out.write(bytes);
        out.flush();
        return this;
    }

    /** What comes back up to the next blank line: the server has begun to read a body that was announced to wait for it. */
    String head() throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = socket.getInputStream().read();
            if (next < 0) {
                return head.toString();
            }
            head.append((char) next);
        }
        return head.toString();
    }

    /** Everything that comes back until the server closes. */
    String answer() throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
