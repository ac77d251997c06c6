package dev.underprop.app.http;

import dev.underprop.api.model.Counts;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.Version;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.FileDescriptorMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What the service counts. The values of every label are few and known: templates of addresses, methods, statuses, stages, verdicts.
 */
final class Meters implements Workbench.Tally, AutoCloseable {
    private static final Duration[] STEPS = {
        Duration.ofMillis(1),
        Duration.ofMillis(3),
        Duration.ofMillis(10),
        Duration.ofMillis(30),
        Duration.ofMillis(100),
        Duration.ofMillis(300),
        Duration.ofSeconds(1),
        Duration.ofSeconds(3),
        Duration.ofSeconds(10),
        Duration.ofSeconds(30)
    };

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Counter contactStates = Counter.builder("underprop.contact.states")
            .description("Contact states that were factorised")
            .register(registry);

    private @Nullable JvmGcMetrics collections;

    Meters() {
        Gauge.builder("underprop.build.info", () -> 1)
                .description("What runs")
                .tag("version", Version.number())
                .tag("commit", Version.commit())
                .tag("java", Runtime.version().toString())
                .register(registry);
        for (Workbench.Reason reason : Workbench.Reason.values()) {
            refusals(reason);
        }
    }

    /** Watches how full a workbench is. */
    void watch(Workbench workbench, Bounds bounds) {
        Gauge.builder("underprop.analyses.waiting", workbench, Workbench::waiting)
                .description("Plans that wait for a place")
                .register(registry);
        Gauge.builder("underprop.analyses.running", workbench, Workbench::atWork)
                .description("Plans that have a place")
                .register(registry);
        Gauge.builder("underprop.analyses.waiting.limit", bounds::waiting)
                .description("Plans that may wait for a place")
                .register(registry);
        Gauge.builder("underprop.analyses.running.limit", bounds::places)
                .description("Places")
                .register(registry);
    }

    /** A request was answered. */
    void answered(String route, String method, int status, long nanos) {
        Timer.builder("underprop.requests")
                .description("Requests, from the end of their heads to the end of their answers")
                .tag("route", route)
                .tag("method", method)
                .tag("status", Integer.toString(status))
                .serviceLevelObjectives(STEPS)
                .register(registry)
                .record(nanos, TimeUnit.NANOSECONDS);
    }

    /** The stages of an answer. */
    void stages(Timing timing) {
        timing.stages()
                .forEach((stage, nanos) -> Timer.builder("underprop.stages")
                        .description("Stages of answers to plans")
                        .tag("stage", Timing.word(stage))
                        .serviceLevelObjectives(STEPS)
                        .register(registry)
                        .record(nanos, TimeUnit.NANOSECONDS));
    }

    /** An answer to a plan. */
    void judged(Object model) {
        if (model instanceof PlanCheck check) {
            judged("plan-check", check.getVerdict());
            count(check.getCounts());
        } else if (model instanceof LayoutAnalysis analysis) {
            judged("layout-analysis", analysis.getVerdict());
            count(analysis.getCounts());
        } else if (model instanceof LiftPlan lift) {
            judged("lift-plan", lift.getOutcome());
        } else if (model instanceof PadSizing sizing) {
            judged("pad-sizing", sizing.getState());
        }
    }

    private void judged(String question, Enum<?> verdict) {
        Counter.builder("underprop.verdicts")
                .description("Answers to plans by what they say")
                .tag("question", question)
                .tag("verdict", verdict.name().toLowerCase(Locale.ROOT))
                .register(registry)
                .increment();
    }

    private void count(Counts counts) {
        contactStates.increment(counts.getContactStates());
    }

    @Override
    public void refused(Workbench.Reason reason) {
        refusals(reason).increment();
    }

    private Counter refusals(Workbench.Reason reason) {
        return Counter.builder("underprop.analyses.refused")
                .description("Plans turned away or given up")
                .tag("reason", reason.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .register(registry);
    }

    /** All of it, in the text format of Prometheus. */
    String text() {
        watchProcess();
        return registry.scrape();
    }

    /** Watches the process itself from when somebody asks first, and not from the start on, which it would make a tenth longer. */
    private synchronized void watchProcess() {
        if (collections != null) {
            return;
        }
        collections = new JvmGcMetrics();
        collections.bindTo(registry);
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        new FileDescriptorMetrics().bindTo(registry);
        new UptimeMetrics().bindTo(registry);
    }

    @Override
    public synchronized void close() {
        if (collections != null) {
            collections.close();
        }
        registry.close();
    }
}
