package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.CataloguePage;
import dev.underprop.api.model.CataloguePart;
import dev.underprop.api.model.CheckSummary;
import dev.underprop.api.model.HealthStatus;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.Problem;
import dev.underprop.api.model.ProblemError;
import dev.underprop.app.Demos;
import dev.underprop.client.ApiClient;
import dev.underprop.client.ApiException;
import dev.underprop.client.CatalogueApi;
import dev.underprop.client.ChecksApi;
import dev.underprop.client.HealthApi;
import dev.underprop.client.PlansApi;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The generated client against the real service. */
@ExtendWith(RunningService.class)
class GeneratedClientTest {
    private ApiClient client = new ApiClient();

    @BeforeEach
    void pointAtTheService() {
        client = new ApiClient();
        client.updateBaseUri(RunningService.address());
    }

    @Test
    void analyses() throws ApiException {
        LayoutAnalysis analysis = new PlansApi(client).analyseLayout(plan("two-spans.yaml"), "us", "compact", null);

        assertThat(analysis.getSituations()
                        .get(0)
                        .getPosts()
                        .get(1)
                        .getGreatest()
                        .getValue())
                .isEqualTo(5000.0);
        assertThat(analysis.getNotChecked()).isNotEmpty();
    }

    @Test
    void checks() throws ApiException {
        PlanCheck check = new PlansApi(client).checkPlan(plan("sill-out-loose.yaml"), "si", null, null);

        assertThat(check.getVerdict()).isEqualTo(PlanVerdict.UNSTABLE);
        assertThat(check.getCautions()).isNotEmpty();
    }

    @Test
    void getsTheProblemOfAFaultyPlan() {
        JobPlan faulty = plan("two-spans.yaml");
        faulty.getShores().get(0).setAt("6 kip");

        assertThatThrownBy(() -> new PlansApi(client).checkPlan(faulty, null, null, null))
                .isInstanceOfSatisfying(ApiException.class, failure -> {
                    assertThat(failure.getCode()).isEqualTo(422);
                    assertThat(problem(failure).getErrors())
                            .extracting(ProblemError::getPointer)
                            .containsExactly("/shores/0/at");
                });
    }

    @Test
    void getsTheProblemOfAnUnknownUnit() {
        assertThatThrownBy(() -> new PlansApi(client).checkPlan(plan("two-spans.yaml"), "metric", null, null))
                .isInstanceOfSatisfying(ApiException.class, failure -> {
                    assertThat(failure.getCode()).isEqualTo(422);
                    assertThat(problem(failure).getErrors().get(0).getPointer()).isEqualTo("?units");
                });
    }

    @Test
    void explainsEveryCheck() throws ApiException {
        ChecksApi checks = new ChecksApi(client);
        List<CheckSummary> all = checks.listChecks().getChecks();

        assertThat(all).isNotEmpty();
        for (CheckSummary check : all) {
            assertThat(checks.explainCheck(check.getId()).getTitle()).isEqualTo(check.getTitle());
        }
    }

    @Test
    void looksUp() throws ApiException {
        CatalogueApi catalogue = new CatalogueApi(client);

        assertThat(catalogue.listCatalogue(null).getParts())
                .extracting(CataloguePart::getPart)
                .contains("soils");
        CataloguePage page = catalogue.showCatalogue("acme-screws", "1-1/2", null, 1, null, null);
        assertThat(page.getEntries().get(0).getName()).isEqualTo("Acme 1-1/2-4");
        assertThat(page.getEntries().get(0).getValues().get(1).getValue()).isEqualTo("1/4 in");
    }

    @Test
    void isReady() throws ApiException {
        assertThat(new HealthApi(client).healthReady().getStatus()).isEqualTo(HealthStatus.UP);
    }

    private static JobPlan plan(String demo) {
        Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(Demos.text(demo));
        return new ObjectMapper().convertValue(tree, JobPlan.class);
    }

    private static Problem problem(ApiException failure) {
        try {
            return new ObjectMapper().readValue(failure.getResponseBody(), Problem.class);
        } catch (JsonProcessingException e) {
            throw new AssertionError(failure.getResponseBody(), e);
        }
    }
}
