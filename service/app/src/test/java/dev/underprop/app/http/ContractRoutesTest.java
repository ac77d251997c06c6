package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The service answers to the operations of the contract and to nothing else. */
class ContractRoutesTest {

    @Test
    void routesAreTheOperationsOfTheContract() {
        try (Service service = Service.start(Settings.at("127.0.0.1", 0))) {
            Set<String> routes = new TreeSet<>();
            service.router().allHttpHandlers().stream()
                    .map(entry -> entry.endpoint)
                    .filter(endpoint -> !endpoint.method.name().equals("HEAD"))
                    .forEach(endpoint -> routes.add(endpoint.method.name() + " " + endpoint.path));

            assertThat(routes).isEqualTo(operations()).hasSize(17);
        }
    }

    private static Set<String> operations() {
        Map<String, Map<String, Map<String, Object>>> contract =
                new Yaml(new SafeConstructor(new LoaderOptions())).load(ContractFilter.contract());
        Set<String> operations = new TreeSet<>();
        contract.getOrDefault("paths", Map.of())
                .forEach((path, item) ->
                        item.keySet().forEach(method -> operations.add(method.toUpperCase(Locale.ROOT) + " " + path)));
        return operations;
    }
}
