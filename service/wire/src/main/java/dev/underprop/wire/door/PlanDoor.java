package dev.underprop.wire.door;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.lift.Lifter;
import dev.underprop.wire.answer.AnswerWriter;
import dev.underprop.wire.answer.LiftWriter;
import dev.underprop.wire.answer.Question;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.meaning.PlanReader;
import dev.underprop.wire.meaning.PlanReading;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.Locator;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.util.Comparator;
import java.util.List;

/** Reads a plan, has it judged and words the answer. Holds no state between plans; safe for any number of threads. */
public final class PlanDoor {

    private static final Comparator<Fault> IN_ORDER_OF_TEXT = Comparator.comparingInt(Fault::line)
            .thenComparingInt(Fault::column)
            .thenComparing(Fault::pointer)
            .thenComparing(Fault::code);

    private final TreeReader trees = new TreeReader(Limits.USUAL);
    private final ModelReader models = new ModelReader();
    private final ShapeCheck shapes = new ShapeCheck(models.mapper(), JobPlan.class, Limits.USUAL.faults());
    private final Catalogue catalogue = Catalogue.standard();
    private final PlanReader plans = new PlanReader(catalogue);
    private final SizingDoor pads = new SizingDoor(trees, models, catalogue);

    /** SHA-256 of the tables that are looked up, as answers name it. */
    public String catalogueDigest() {
        return catalogue.digest();
    }

    /** Forces, reactions, deflections, checks and advisories of a layout. */
    public Answer<LayoutAnalysis> analyse(byte[] text, Format format, AnswerOptions options) {
        return analyse(text, format, options, Watch.NONE);
    }

    /** The same, watched. */
    public Answer<LayoutAnalysis> analyse(byte[] text, Format format, AnswerOptions options, Watch watch) {
        return answer(text, format, options, watch, (writer, plan, tree) -> writer.analysis());
    }

    /** All that the plan contains, judged to one verdict; a brief answer lacks whatever it says in words, and pads. */
    public Answer<PlanCheck> check(byte[] text, Format format, AnswerOptions options) {
        return check(text, format, options, Watch.NONE);
    }

    /** The same, watched. */
    public Answer<PlanCheck> check(byte[] text, Format format, AnswerOptions options, Watch watch) {
        if (options.detail() == AnswerOptions.Detail.BRIEF) {
            return answer(text, format, options, watch, (writer, plan, tree) -> writer.brief());
        }
        return answer(text, format, options, watch, (writer, plan, tree) -> {
            PlanCheck check = writer.check();
            plan.sizing().forEach(asked -> check.sizing(pads.answer(asked, tree, options, watch)));
            return check;
        });
    }

    private interface Wanted<T> {
        T from(AnswerWriter writer, PlanReading.Understood plan, JsonNode tree);
    }

    /** Pads for posts. */
    public Answer<PadSizing> sizePads(byte[] text, Format format, AnswerOptions options) {
        return sizePads(text, format, options, Watch.NONE);
    }

    /** The same, watched. */
    public Answer<PadSizing> sizePads(byte[] text, Format format, AnswerOptions options, Watch watch) {
        return pads.size(text, format, options, watch);
    }

    /** How the floor of a plan is raised, turn by turn. A plan that asks for no lift is faulty. */
    public Answer<LiftPlan> lift(byte[] text, Format format, AnswerOptions options) {
        return lift(text, format, options, Watch.NONE);
    }

    /** The same, watched. */
    public Answer<LiftPlan> lift(byte[] text, Format format, AnswerOptions options, Watch watch) {
        watch.begins(Watch.Stage.PARSE);
        Answer<Read> read = read(text, format, options);
        if (!(read instanceof Answer.Judged<Read> judged)) {
            return read.unanswered();
        }
        if (!(judged.model().understood().lift() instanceof PlanReading.Raised raised)) {
            Fault missing = Messages.MEMBER_MISSING.fault("", "lift").withPointer("/lift");
            return faulty(judged.model().tree(), List.of(missing), text, format);
        }
        Question question = judged.model().question();
        watch.begins(Watch.Stage.SOLVE);
        dev.underprop.engine.lift.LiftPlan lift = Lifter.plan(question.plan(), raised.request(), watch::isOver);
        watch.begins(Watch.Stage.WRITE);
        return new Answer.Judged<>(new LiftWriter(question, raised.request(), lift).write());
    }

    /** A plan that was read, and what is asked of it. */
    private record Read(Question question, PlanReading.Understood understood, JsonNode tree) {}

    private <T> Answer<T> answer(byte[] text, Format format, AnswerOptions options, Watch watch, Wanted<T> wanted) {
        watch.begins(Watch.Stage.PARSE);
        Answer<Read> read = read(text, format, options);
        if (!(read instanceof Answer.Judged<Read> judged)) {
            return read.unanswered();
        }
        Read plan = judged.model();
        watch.begins(Watch.Stage.SOLVE);
        Assessment assessment = Assessor.assess(plan.understood().plan(), options.working(), watch::isOver);
        watch.begins(Watch.Stage.WRITE);
        return new Answer.Judged<>(
                wanted.from(new AnswerWriter(plan.question(), assessment), plan.understood(), plan.tree()));
    }

    /** The four steps of reading, each complete before the next. */
    private Answer<Read> read(byte[] text, Format format, AnswerOptions options) {
        TreeReading reading = trees.read(text, format);
        if (reading instanceof TreeReading.Unreadable unreadable) {
            return new Answer.Unreadable<>(unreadable.faults());
        }
        JsonNode tree = ((TreeReading.Tree) reading).root();
        List<Fault> misshapen = shapes.check(tree);
        if (!misshapen.isEmpty()) {
            return faulty(tree, misshapen, text, format);
        }
        JobPlan model = models.bind(tree);
        List<Fault> beyondLimits = models.faults(model);
        if (!beyondLimits.isEmpty()) {
            return faulty(tree, beyondLimits, text, format);
        }
        PlanReading meaning = plans.read(model);
        if (meaning instanceof PlanReading.Refused refused) {
            return faulty(tree, refused.faults(), text, format);
        }
        PlanReading.Understood understood = (PlanReading.Understood) meaning;
        Question question = new Question(
                model,
                understood.plan(),
                PlanDigest.of(tree),
                catalogue.digest(),
                understood.assumptions(),
                options.units(),
                options.detail() == AnswerOptions.Detail.FULL,
                options.working());
        return new Answer.Judged<>(new Read(question, understood, tree));
    }

    static <T> Answer<T> faulty(JsonNode tree, List<Fault> faults, byte[] text, Format format) {
        JsonNode id = tree.path("id");
        return new Answer.Faulty<>(
                id.isTextual() ? id.textValue() : "",
                Locator.locate(faults, text, format).stream()
                        .sorted(IN_ORDER_OF_TEXT)
                        .toList());
    }
}
