package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** What takes too long, or too much, is given up, and the service goes on. */
class LimitsHttpTest {
    private static final String HEAD = "GET /health/live HTTP/1.1\r\nHost: localhost\r\n";

    private static Service service(Bounds bounds) {
        return Service.start(Settings.at("127.0.0.1", 0).with(bounds));
    }

    private static Response check(int port, String plan) {
        return Client.to(port, true)
                .contentType("application/yaml")
                .body(plan.getBytes(StandardCharsets.UTF_8))
                .post("/v1/plan-checks");
    }

    private static void await(BooleanSupplier wanted) throws InterruptedException {
        for (int i = 0; i < 400 && !wanted.getAsBoolean(); i++) {
            Thread.sleep(50);
        }
        assertThat(wanted.getAsBoolean()).isTrue();
    }

    private static boolean metric(int port, String line) {
        return Client.to(port, false).get("/metrics").asString().lines().anyMatch(line::equals);
    }

    /** Its only thread is free for others soon after, so the plan does not go on unseen. */
    @Test
    void planBuiltToBeSlowIsGivenUp() throws InterruptedException {
        try (Service service = service(Bounds.usual().withWorkbench(1, 4, Duration.ofSeconds(3)))) {
            Response answer = check(service.port(), SlowPlans.plan(200, 10, 40));

            assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(422);
            assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/too-costly");
            assertThat(answer.jsonPath().getString("detail")).endsWith("which is 3 seconds.");
            assertThat(answer.header("Retry-After")).isNull();
            await(() -> metric(service.port(), "underprop_analyses_running 0.0"));
            assertThat(metric(service.port(), "underprop_analyses_refused_total{reason=\"too-slow\"} 1.0"))
                    .isTrue();
            assertThat(check(service.port(), Demos.text("two-spans.yaml")).statusCode())
                    .isEqualTo(200);
        }
    }

    @Test
    void headThatDripsIsGivenUp() throws IOException, InterruptedException {
        try (Service service = service(Bounds.usual().withBodyTime(Duration.ofMillis(800)));
                Wire wire = new Wire(service.port())) {
            wire.send("GET /health/live HTTP/1.1\r\nHost: localhost\r\nX-Slow: ");
            long start = System.nanoTime();
            assertThatThrownBy(() -> {
                        for (int i = 0; i < 200; i++) {
                            wire.send("x");
                            Thread.sleep(100);
                        }
                    })
                    .isInstanceOf(IOException.class);
            assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(10));
        }
    }

    /** One request after the other on the same connection is no slow head, however long it lasts. */
    @Test
    void connectionThatIsUsedIsKept() throws IOException, InterruptedException {
        try (Service service = service(Bounds.usual().withBodyTime(Duration.ofMillis(300)));
                Wire wire = new Wire(service.port())) {
            for (int i = 0; i < 12; i++) {
                wire.send(HEAD.replace("GET", "HEAD") + "\r\n");
                assertThat(wire.head()).startsWith("HTTP/1.1 200 ");
                Thread.sleep(100);
            }
        }
    }

    @Test
    void silentConnectionIsClosed() throws IOException {
        try (Service service = service(Bounds.usual().withIdleTime(Duration.ofMillis(300)));
                Wire wire = new Wire(service.port())) {
            assertThat(wire.answer()).isEmpty();
        }
    }

    /** Asks for far more than any buffer holds, and reads nothing. */
    @Test
    void readerThatDoesNotReadHoldsNothingForLong() throws IOException, InterruptedException {
        try (Service service = service(Bounds.usual().withIdleTime(Duration.ofMillis(700)));
                Wire wire = new Wire(service.port())) {
            wire.send("GET /pages/swagger-ui-bundle.js HTTP/1.1\r\nHost: localhost\r\n\r\n".repeat(60));
            await(() -> service.requests() == 1);
            Thread.sleep(300);
            await(() -> service.requests() == 0);
            assertThat(Client.to(service.port(), false).get("/health/live").statusCode())
                    .isEqualTo(200);
        }
    }

    @Test
    void connectionsBeyondTheLimitWait() throws IOException {
        try (Service service = service(Bounds.usual().withConnections(3))) {
            List<Wire> open = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                Wire wire = new Wire(service.port()).send(HEAD.replace("GET", "HEAD") + "\r\n");
                assertThat(wire.head()).startsWith("HTTP/1.1 200 ");
                open.add(wire);
            }
            try (Wire late = new Wire(service.port())) {
                late.patience(600);
                late.send(HEAD + "Connection: close\r\n\r\n");
                assertThatThrownBy(late::answer).isInstanceOf(SocketTimeoutException.class);
                open.get(0).close();
                late.patience(20_000);
                assertThat(late.answer()).startsWith("HTTP/1.1 200 ");
            }
            for (Wire wire : open) {
                wire.close();
            }
        }
    }

    /** Whoever sends plans hears that it leaves while they are still answered. */
    @Test
    void leavingIsSaidBeforePlansAreTurnedAway() throws InterruptedException {
        Service service = service(Bounds.usual().withStop(Duration.ofSeconds(4), Duration.ofSeconds(5)));
        int port = service.port();
        check(port, Demos.text("two-spans.yaml"));
        Thread stop = new Thread(service::close, "stop");
        stop.start();
        await(() -> Client.to(port, true).get("/health/ready").statusCode() == 503);

        assertThat(check(port, Demos.text("two-spans.yaml")).statusCode()).isEqualTo(200);
        assertThat(Client.to(port, false).get("/health/live").statusCode()).isEqualTo(200);
        stop.join(20_000);
        assertThat(stop.isAlive()).isFalse();
    }

    /** Plans at work when the time to stop is nearly over are given up, and whoever waits for them is told. */
    @Test
    void slowPlanDoesNotHoldUpTheStop() throws InterruptedException {
        Service service = service(Bounds.usual()
                .withWorkbench(1, 4, Duration.ofSeconds(60))
                .withStop(Duration.ZERO, Duration.ofSeconds(8)));
        int port = service.port();
        CompletableFuture<Response> told = CompletableFuture.supplyAsync(
                () -> check(port, SlowPlans.plan(200, 10, 40)), task -> new Thread(task, "client").start());
        await(() -> metric(port, "underprop_analyses_running 1.0"));

        long start = System.nanoTime();
        service.close();
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(15));
        assertThat(told.join().statusCode()).isEqualTo(503);
        assertThat(told.join().jsonPath().getString("detail")).isEqualTo("The service is stopping.");
    }
}
