package dev.underprop.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ContractTest {
    @Test
    void contractTravelsInTheJar() throws IOException {
        try (InputStream contract = ContractTest.class.getResourceAsStream("/openapi/openapi.yaml")) {
            assertThat(contract).isNotNull();
            assertThat(new String(contract.readAllBytes(), StandardCharsets.UTF_8))
                    .startsWith("openapi: 3.0.3\n");
        }
    }
}
