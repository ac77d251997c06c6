package dev.underprop.bench;

import dev.underprop.api.model.PadSizing;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Pads for forty posts out of thirty pads of each of four kinds, from the text of the request to the text of the answer. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class PadsBenchmark {

    private static final int POSTS = 40;
    private static final int PADS = 30;

    private final PlanDoor door = new PlanDoor();
    private final byte[] request = request().getBytes(StandardCharsets.UTF_8);

    /** Text in, text out. */
    @Benchmark
    public byte[] size() {
        return Documents.json(answer(), false);
    }

    /** Text in, answer out, not yet written. */
    @Benchmark
    public PadSizing answer() {
        Answer<PadSizing> answer = door.sizePads(request, Format.JSON, AnswerOptions.USUAL);
        if (answer instanceof Answer.Judged<PadSizing> judged) {
            return judged.model();
        }
        throw new IllegalStateException("the request was not answered: " + answer);
    }

    private static String request() {
        StringBuilder text = new StringBuilder("{\"objective\":\"area\",\"loads\":[");
        for (int p = 0; p < POSTS; p++) {
            text.append(p == 0 ? "" : ",")
                    .append(text(
                            "{\"name\":\"P%d\",\"x\":\"%d ft\",\"y\":\"%d ft\",\"dead\":\"%d lb\",\"live\":\"%d lb\"}",
                            p, p % 10 * 6, p / 10 * 8, 600 + 60 * p, 800 + 70 * p));
        }
        text.append("],\"basePlate\":{\"along\":\"6 in\",\"across\":\"6 in\"},\"ground\":{\"allowable\":\"2000 psf\",")
                .append("\"source\":\"report\",\"condition\":\"undisturbed\",\"subgrade\":{\"soft\":\"150 pci\",")
                .append("\"stiff\":\"300 pci\",\"source\":\"report\"}},\"excavation\":{\"none\":true},\"limits\":{")
                .append(
                        "\"settlement\":\"1/2 in\",\"settlementSlope\":0.01,\"settlementCriterion\":\"agreed\"},\"stock\":[");
        for (int i = 0; i < PADS; i++) {
            text.append(i == 0 ? "" : ",")
                    .append(cast(i))
                    .append(',')
                    .append(mat(i))
                    .append(',');
            text.append(block(i)).append(',').append(crib(i));
        }
        return text.append("]}").toString();
    }

    private static String cast(int i) {
        return text(
                "{\"pad\":{\"name\":\"cast %d\",\"kind\":\"concrete\",\"make\":\"cast\",\"along\":\"%d in\",\"across\":\"%d in\","
                        + "\"thickness\":\"%d in\",\"strength\":\"3000 psi\",\"centring\":\"1/2 in\"}}",
                i, 14 + i, 14 + i, 8 + i / 3);
    }

    private static String mat(int i) {
        return text(
                "{\"pad\":{\"name\":\"mat %d\",\"kind\":\"timber\",\"along\":\"%d in\",\"across\":\"22.5 in\",\"thickness\":\"5 in\","
                        + "\"unitWeight\":\"35 pcf\",\"centring\":\"1/4 in\",\"mat\":{\"run\":\"along\",\"sleepers\":2,\"bearers\":1,"
                        + "\"breadth\":\"2.5 in\",\"depth\":\"11.25 in\",\"species\":\"douglas fir-larch\",\"grade\":\"No.1\","
                        + "\"treatment\":\"none\",\"plate\":{\"along\":\"8 in\",\"across\":\"8 in\",\"thickness\":\"1/2 in\","
                        + "\"yieldStress\":\"36 ksi\"}}}}",
                i, 16 + i);
    }

    private static String block(int i) {
        return text(
                "{\"pad\":{\"name\":\"block %d\",\"kind\":\"concrete\",\"make\":\"solid block\",\"along\":\"%d in\",\"across\":\"16 in\","
                        + "\"thickness\":\"4 in\",\"strength\":\"4000 psi\",\"rating\":\"%d lb\",\"ratingSource\":\"sheet\","
                        + "\"centring\":\"1/2 in\"}}",
                i, 12 + i, 1500 + 200 * i);
    }

    private static String crib(int i) {
        return text(
                "{\"pad\":{\"name\":\"crib %d\",\"kind\":\"crib\",\"along\":\"%d in\",\"across\":\"%d in\",\"thickness\":\"11 in\","
                        + "\"unitWeight\":\"35 pcf\",\"centring\":\"1/4 in\",\"crib\":{\"timbers\":2,\"width\":\"3.5 in\","
                        + "\"bearing\":\"335 psi\",\"source\":\"sheet\",\"solidEnds\":true}}}",
                i, 14 + i, 14 + i);
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
