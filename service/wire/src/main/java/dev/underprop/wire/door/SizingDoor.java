package dev.underprop.wire.door;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PadSizingRequest;
import dev.underprop.engine.sizing.PadSizer;
import dev.underprop.engine.sizing.PlanSizer;
import dev.underprop.wire.answer.SizingQuestion;
import dev.underprop.wire.answer.SizingWriter;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.meaning.SizingReader;
import dev.underprop.wire.meaning.SizingReading;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import java.util.List;

/** Reads a request for pads, has them found and words the answer, in the steps in which plans are read. */
final class SizingDoor {

    private final TreeReader trees;
    private final ModelReader models;
    private final ShapeCheck shapes;
    private final Catalogue catalogue;
    private final SizingReader reader;

    SizingDoor(TreeReader trees, ModelReader models, Catalogue catalogue) {
        this.trees = trees;
        this.models = models;
        this.shapes = new ShapeCheck(models.mapper(), PadSizingRequest.class, Limits.USUAL.faults());
        this.catalogue = catalogue;
        this.reader = new SizingReader(catalogue);
    }

    Answer<PadSizing> size(byte[] text, Format format, AnswerOptions options, Watch watch) {
        watch.begins(Watch.Stage.PARSE);
        TreeReading reading = trees.read(text, format);
        if (reading instanceof TreeReading.Unreadable unreadable) {
            return new Answer.Unreadable<>(unreadable.faults());
        }
        JsonNode tree = ((TreeReading.Tree) reading).root();
        List<Fault> misshapen = shapes.check(tree);
        if (!misshapen.isEmpty()) {
            return PlanDoor.faulty(tree, misshapen, text, format);
        }
        PadSizingRequest model = models.bind(tree, PadSizingRequest.class);
        List<Fault> beyondLimits = models.faults(model);
        if (!beyondLimits.isEmpty()) {
            return PlanDoor.faulty(tree, beyondLimits, text, format);
        }
        SizingReading meaning = reader.read(model);
        if (meaning instanceof SizingReading.Refused refused) {
            return PlanDoor.faulty(tree, refused.faults(), text, format);
        }
        return new Answer.Judged<>(answer(meaning, tree, options, watch));
    }

    /** @param meaning what was understood
     * @param tree of the document that asks, for its digest */
    PadSizing answer(SizingReading meaning, JsonNode tree, AnswerOptions options, Watch watch) {
        watch.begins(Watch.Stage.SOLVE);
        String digest = PlanDigest.of(tree);
        boolean full = options.detail() == AnswerOptions.Detail.FULL;
        if (meaning instanceof SizingReading.Loads loads) {
            SizingQuestion question = new SizingQuestion(
                    loads.task().objective(),
                    loads.task().site().ground(),
                    loads.pads(),
                    digest,
                    catalogue.digest(),
                    loads.assumptions(),
                    options.units(),
                    full,
                    options.working());
            dev.underprop.engine.sizing.PadSizing found =
                    PadSizer.size(loads.task().telling(options.working()), watch::isOver);
            watch.begins(Watch.Stage.WRITE);
            return new SizingWriter(question).found(found);
        }
        SizingReading.OfPlan of = (SizingReading.OfPlan) meaning;
        SizingQuestion question = new SizingQuestion(
                of.objective(),
                of.plan().ground(),
                of.pads(),
                digest,
                catalogue.digest(),
                of.assumptions(),
                options.units(),
                full,
                options.working());
        PlanSizer.Outcome found =
                PlanSizer.size(of.plan(), of.stock(), of.objective(), options.working(), watch::isOver);
        watch.begins(Watch.Stage.WRITE);
        return new SizingWriter(question).ofPlan(found);
    }
}
