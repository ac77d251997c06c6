package dev.underprop.wire.door;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.api.model.PlanCheck;
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
import java.util.function.Function;

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

    /** Forces, reactions, deflections, checks and advisories of a layout. */
    public Answer<LayoutAnalysis> analyse(byte[] text, Format format, AnswerOptions options) {
        return answer(text, format, options, AnswerWriter::analysis);
    }

    /** All that the plan contains, judged to one verdict. */
    public Answer<PlanCheck> check(byte[] text, Format format, AnswerOptions options) {
        return answer(text, format, options, AnswerWriter::check);
    }

    /** How the floor of a plan is raised, turn by turn. A plan that asks for no lift is faulty. */
    public Answer<LiftPlan> lift(byte[] text, Format format, AnswerOptions options) {
        Answer<Read> read = read(text, format, options);
        if (!(read instanceof Answer.Judged<Read> judged)) {
            return read.unanswered();
        }
        if (!(judged.model().understood().lift() instanceof PlanReading.Raised raised)) {
            Fault missing = Messages.MEMBER_MISSING.fault("", "lift").withPointer("/lift");
            return faulty(List.of(missing), text, format);
        }
        Question question = judged.model().question();
        return new Answer.Judged<>(
                new LiftWriter(question, raised.request(), Lifter.plan(question.plan(), raised.request())).write());
    }

    /** A plan that was read, and what is asked of it. */
    private record Read(Question question, PlanReading.Understood understood) {}

    private <T> Answer<T> answer(byte[] text, Format format, AnswerOptions options, Function<AnswerWriter, T> wanted) {
        Answer<Read> read = read(text, format, options);
        if (!(read instanceof Answer.Judged<Read> judged)) {
            return read.unanswered();
        }
        Question question = judged.model().question();
        return new Answer.Judged<>(
                wanted.apply(new AnswerWriter(question, Assessor.assess(question.plan(), options.working()))));
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
            return faulty(misshapen, text, format);
        }
        JobPlan model = models.bind(tree);
        List<Fault> beyondLimits = models.faults(model);
        if (!beyondLimits.isEmpty()) {
            return faulty(beyondLimits, text, format);
        }
        PlanReading meaning = plans.read(model);
        if (meaning instanceof PlanReading.Refused refused) {
            return faulty(refused.faults(), text, format);
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
        return new Answer.Judged<>(new Read(question, understood));
    }

    private static <T> Answer<T> faulty(List<Fault> faults, byte[] text, Format format) {
        return new Answer.Faulty<>(Locator.locate(faults, text, format).stream()
                .sorted(IN_ORDER_OF_TEXT)
                .toList());
    }
}
