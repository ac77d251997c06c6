package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Map;
import java.util.zip.ZipException;

/** Reads the body of a request within a size and a time, whether its length was announced or not. */
final class Body {
    private static final int CHUNK = 8192;

    /** Bodies announced at up to this many times the greatest size are let in, and thrown away, before the refusal. */
    private static final long FORBEARANCE = 4;

    private static final Map<String, String> CLOSE = Map.of("Connection", "close");

    private final int most;
    private final Duration patience;

    /**
     * A reader of bodies.
     *
     * @param most greatest size (bytes)
     * @param patience longest time until the last byte
     */
    Body(int most, Duration patience) {
        this.most = most;
        this.patience = patience;
    }

    /** All bytes of the body, unpacked. */
    byte[] read(Context context) {
        boolean packed = Negotiation.packed(context);
        long announced = context.req().getContentLengthLong();
        if (announced > FORBEARANCE * most) {
            throw tooLarge();
        }
        try {
            InputStream in = context.req().getInputStream();
            return announced > most ? refuseAfter(in) : drain(packed ? Gzip.unpacked(in) : in);
        } catch (ZipException e) {
            throw Refused.because(ProblemKind.UNREADABLE, "The body is not well-formed gzip.", CLOSE);
        } catch (IOException e) {
            throw Refused.because(ProblemKind.UNREADABLE, "The body did not arrive whole.", CLOSE);
        }
    }

    /** A client that still writes when it is refused sees a broken pipe instead of the reason, so it may write first. */
    private byte[] refuseAfter(InputStream in) throws IOException {
        long start = System.nanoTime();
        byte[] chunk = new byte[CHUNK];
        while (in.read(chunk) >= 0) {
            if (System.nanoTime() - start > patience.toNanos()) {
                throw tooSlow();
            }
        }
        throw tooLarge();
    }

    private byte[] drain(InputStream in) throws IOException {
        long start = System.nanoTime();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        byte[] chunk = new byte[CHUNK];
        for (int got = in.read(chunk); got >= 0; got = in.read(chunk)) {
            bytes.write(chunk, 0, got);
            if (bytes.size() > most) {
                throw tooLarge();
            }
            if (System.nanoTime() - start > patience.toNanos()) {
                throw tooSlow();
            }
        }
        return bytes.toByteArray();
    }

    private Refused tooLarge() {
        return Refused.because(ProblemKind.TOO_LARGE, "The body is larger than " + most + " bytes.", CLOSE);
    }

    private Refused tooSlow() {
        return Refused.because(
                ProblemKind.UNREADABLE, "The body did not arrive within " + Told.seconds(patience) + ".", CLOSE);
    }
}
