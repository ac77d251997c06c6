package dev.underprop.app.http;

import static io.restassured.RestAssured.given;

import io.restassured.builder.RequestSpecBuilder;
import io.restassured.config.DecoderConfig;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;

/** Requests to the running service, every response of which is held against the contract. */
final class Client {
    private Client() {}

    /** For requests that keep to the contract. */
    static RequestSpecification right() {
        return to(RunningService.port(), false);
    }

    /** For requests that do not. */
    static RequestSpecification wrong() {
        return to(RunningService.port(), true);
    }

    static RequestSpecification to(int port, boolean wrongOnPurpose) {
        return given().spec(new RequestSpecBuilder()
                        .setBaseUri("http://127.0.0.1")
                        .setPort(port)
                        .setUrlEncodingEnabled(false)
                        .setConfig(RestAssuredConfig.config()
                                .decoderConfig(DecoderConfig.decoderConfig().noContentDecoders())
                                .encoderConfig(EncoderConfig.encoderConfig()
                                        .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                        .build())
                .filter(new ContractFilter(wrongOnPurpose));
    }

    static Response postYaml(String path, String plan) {
        return right().contentType("application/yaml")
                .body(plan.getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .post(path);
    }
}
