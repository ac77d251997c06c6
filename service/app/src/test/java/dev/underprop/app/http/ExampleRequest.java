package dev.underprop.app.http;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A row of the table of response examples: what is asked to get the answer that an example shows.
 *
 * @param example name of the response example
 * @param operation id of the operation under which the contract shows it
 * @param status status of the answer
 * @param method method of the request
 * @param address path and query of the request
 * @param headers headers of the request
 * @param body body of the request, empty for none
 * @param likeness how much of the answer the example shows
 */
record ExampleRequest(
        String example,
        String operation,
        int status,
        String method,
        String address,
        Map<String, String> headers,
        byte[] body,
        Likeness likeness) {

    /** How an example is compared with the answer. */
    enum Likeness {
        /** To the last member and digit. */
        WHOLE,
        /** But for the id of the failure, which is new each time; both are ids of the same form. */
        BUT_FOR_INSTANCE,
        /** The example is the lines of the answer that name what the service itself counts; what else there is varies. */
        NAMES,
        /** The answer begins with the example, because the contract cannot hold the whole of itself. */
        BEGINNING
    }

    /** A row for an answer in whole to a request without a body. */
    static ExampleRequest get(String example, String operation, int status, String address) {
        return new ExampleRequest(example, operation, status, "GET", address, Map.of(), new byte[0], Likeness.WHOLE);
    }

    /** A row for an answer in whole to a body. */
    static ExampleRequest post(String example, String operation, int status, String address, String type, byte[] body) {
        return new ExampleRequest(
                example, operation, status, "POST", address, Map.of("Content-Type", type), body, Likeness.WHOLE);
    }

    /** The same with one more header. */
    ExampleRequest with(String header, String value) {
        Map<String, String> more = new LinkedHashMap<>(headers);
        more.put(header, value);
        return new ExampleRequest(example, operation, status, method, address, more, body, likeness);
    }

    /** The same, shown in part. */
    ExampleRequest shown(Likeness other) {
        return new ExampleRequest(example, operation, status, method, address, headers, body, other);
    }

    /** Asks the service on a port. */
    Response ask(int port) {
        RequestSpecification request = Client.to(port, status != 200).headers(headers);
        return (body.length == 0 ? request : request.body(body)).request(method, address);
    }

    @Override
    public String toString() {
        return example + ": " + method + " " + address;
    }
}
