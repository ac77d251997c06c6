package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.underprop.app.Demos;
import java.io.IOException;
import java.net.ConnectException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class StoppingTest {

    @Test
    void finishesWhatHasBegunAndTakesNothingNew() throws IOException, InterruptedException {
        byte[] plan = Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8);
        Service service = Service.start(Settings.at("127.0.0.1", 0));
        int port = service.port();
        try (Wire wire = new Wire(port)) {
            wire.send("POST /v1/plan-checks HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                    + "Expect: 100-continue\r\n"
                    + "Content-Type: application/yaml\r\nContent-Length: " + plan.length + "\r\n\r\n");
            assertThat(wire.head()).startsWith("HTTP/1.1 100 ");
            wire.send(Arrays.copyOf(plan, 10));
            Thread stop = new Thread(service::close, "stop");
            stop.start();
            Thread.sleep(300);
            assertThat(stop.isAlive()).as("waiting for the request").isTrue();

            wire.send(Arrays.copyOfRange(plan, 10, plan.length));

            assertThat(wire.answer()).startsWith("HTTP/1.1 200 ").contains("\"plan-check\"");
            stop.join(20_000);
            assertThat(stop.isAlive()).isFalse();
        }
        assertThatThrownBy(() -> new Wire(port)).isInstanceOf(ConnectException.class);
    }

    @Test
    void readinessFollowsTheLifeOfTheService() {
        Readiness readiness = new Readiness();

        assertRefused(readiness, "The service is starting.");
        readiness.ready();
        readiness.check();
        readiness.stopping();
        assertRefused(readiness, "The service is stopping.");
    }

    private static void assertRefused(Readiness readiness, String detail) {
        assertThatThrownBy(readiness::check).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.problem().getStatus()).isEqualTo(503);
            assertThat(refused.problem().getDetail()).isEqualTo(detail);
            assertThat(refused.headers()).containsEntry("Retry-After", "2");
        });
    }
}
