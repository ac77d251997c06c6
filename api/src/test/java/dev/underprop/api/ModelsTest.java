package dev.underprop.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.Ground;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.JoistSet;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.Post;
import dev.underprop.api.model.Rating;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the reader and the client lean on in the generated models. */
class ModelsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void quantitiesAreTextsAndCountsAreIntegers() throws NoSuchMethodException {
        assertThat(Post.class.getMethod("getHeight").getReturnType()).isEqualTo(String.class);
        assertThat(Post.class.getMethod("getRigid").getReturnType()).isEqualTo(Boolean.class);
        assertThat(JoistSet.class.getMethod("getCount").getReturnType()).isEqualTo(Integer.class);
        assertThat(JoistSet.class.getMethod("getEach").getReturnType()).isEqualTo(List.class);
        assertThat(Rating.class.getMethod("getFactor").getReturnType()).isEqualTo(Double.class);
    }

    @Test
    void limitsOfTheContractAreAnnotations() throws NoSuchMethodException {
        assertThat(JobPlan.class.getMethod("getFloor").isAnnotationPresent(NotNull.class))
                .isTrue();
        assertThat(JobPlan.class.getMethod("getFloor").isAnnotationPresent(Valid.class))
                .isTrue();
        assertThat(JobPlan.class
                        .getMethod("getSituations")
                        .getAnnotation(Size.class)
                        .max())
                .isEqualTo(20);
        assertThat(JoistSet.class.getMethod("getCount").getAnnotation(Max.class).value())
                .isEqualTo(500);
        assertThat(Rating.class
                        .getMethod("getFactor")
                        .getAnnotation(DecimalMin.class)
                        .inclusive())
                .isFalse();
    }

    @Test
    void absentStaysAbsent() throws JsonProcessingException {
        JobPlan plan = JSON.readValue("{\"basis\": \"us-asd\"}", JobPlan.class);

        assertThat(plan.getPads()).isNull();
        assertThat(plan.getShores()).isNull();
        assertThat(JSON.readValue("{}", Rating.class).getInterpolate()).isNull();
    }

    @Test
    void classOfGroundIsReachedByAnotherName() throws JsonProcessingException {
        Ground ground = JSON.readValue("{\"class\": \"silty sand\"}", Ground.class);

        assertThat(ground.getGroundClass()).isEqualTo("silty sand");
        assertThat(JSON.writeValueAsString(ground)).contains("\"class\":\"silty sand\"");
    }

    @Test
    void laterVerdictsOfAnAnswerAreTolerated() throws JsonProcessingException {
        assertThat(JSON.readValue("\"ADEQUATE\"", PlanVerdict.class)).isEqualTo(PlanVerdict.ADEQUATE);
        assertThat(JSON.readValue("\"DOUBTFUL\"", PlanVerdict.class)).isEqualTo(PlanVerdict.UNKNOWN_DEFAULT_OPEN_API);
    }
}
