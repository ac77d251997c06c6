package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Our own defects are answered with an id and without a stack. */
class FailuresHttpTest {
    private static Service service;

    @BeforeAll
    static void startWithRoutesThatFail() {
        service = Service.start(Settings.at("127.0.0.1", 0), routes -> {
            routes.get("/exception", context -> {
                throw new IllegalStateException("a secret of the house");
            });
            routes.get("/error", context -> {
                throw new StackOverflowError("a secret of the house");
            });
            routes.get("/checked", context -> {
                throw new java.io.IOException("a secret of the house");
            });
        });
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/exception", "/error", "/checked"})
    void defectHasAnIdAndNoStack(String path) {
        Response answer = Client.to(service.port(), true).get(path);

        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
        assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/internal-error");
        assertThat(answer.jsonPath().getString("instance")).matches("urn:uuid:[0-9a-f-]{36}");
        assertThat(answer.asString())
                .doesNotContain("secret")
                .doesNotContain("Exception")
                .doesNotContain("at dev.");
    }

    @Test
    void serviceAnswersAfterADefect() {
        Client.to(service.port(), true).get("/error");

        assertThat(Client.to(service.port(), false).get("/health/ready").statusCode())
                .isEqualTo(200);
    }
}
