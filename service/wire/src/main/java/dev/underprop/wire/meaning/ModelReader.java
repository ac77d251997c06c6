package dev.underprop.wire.meaning;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.underprop.api.model.JobPlan;
import dev.underprop.wire.fault.Fault;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.MessageInterpolator;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.ValidatorFactory;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.hibernate.validator.HibernateValidator;

/**
 * Binds a tree whose shape is right to the contract's model and holds it to the contract's limits. Holds no state after
 * construction and may be shared between threads.
 */
public final class ModelReader {

    private final ObjectMapper mapper = JsonMapper.builder().build();
    /** Begun at once and on another thread: nothing else that is made at the start takes as long. */
    private final CompletableFuture<Validator> validator = CompletableFuture.supplyAsync(ModelReader::validator);

    private static Validator validator() {
        // The factory lives as long as the validator: closing it would end the validator.
        @SuppressWarnings("resource")
        ValidatorFactory factory = Validation.byProvider(HibernateValidator.class)
                .configure()
                .ignoreXmlConfiguration()
                .messageInterpolator(new NoMessages())
                .buildValidatorFactory();
        return factory.getValidator();
    }

    /** Leaves the templates of the constraints as they are: what is wrong is said by {@link Violations}. */
    private static final class NoMessages implements MessageInterpolator {
        @Override
        public String interpolate(String template, Context context) {
            return template;
        }

        @Override
        public String interpolate(String template, Context context, Locale locale) {
            return template;
        }
    }

    /** The mapper that binds, for the check of shape. */
    public ObjectMapper mapper() {
        return mapper;
    }

    /**
     * The model of a tree.
     *
     * @param tree a tree whose shape was found right
     */
    public JobPlan bind(JsonNode tree) {
        return bind(tree, JobPlan.class);
    }

    /**
     * The model of a tree.
     *
     * @param tree a tree whose shape was found right
     * @param model class of the model
     */
    public <T> T bind(JsonNode tree, Class<T> model) {
        try {
            return mapper.treeToValue(tree, model);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of the right shape does not bind", e);
        }
    }

    /** The limits that a model breaks, sorted by pointer and code; empty when there are none. */
    public List<Fault> faults(Object model) {
        return validator.join().validate(model).stream()
                .map(violation -> Violations.fault((ConstraintViolation<?>) violation))
                .sorted(Comparator.comparing(Fault::pointer).thenComparing(Fault::code))
                .toList();
    }
}
