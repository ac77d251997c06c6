package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.door.Watch;
import dev.underprop.wire.tree.Format;
import io.javalin.http.Context;
import java.util.function.Function;
import java.util.function.Supplier;

/** The operations that take a plan. */
final class Plans {
    private final Supplier<PlanDoor> door;
    private final Body body;
    private final Workbench workbench;
    private final Readiness readiness;
    private final Meters meters;

    Plans(Supplier<PlanDoor> door, Body body, Workbench workbench, Readiness readiness, Meters meters) {
        this.meters = meters;
        this.door = door;
        this.body = body;
        this.workbench = workbench;
        this.readiness = readiness;
    }

    void analyse(Context context) {
        answer(context, "plan", Query::options, PlanDoor::analyse);
    }

    void check(Context context) {
        answer(context, "plan", Query::options, PlanDoor::check);
    }

    void lift(Context context) {
        answer(context, "plan", Query::unitsOnly, PlanDoor::lift);
    }

    void sizePads(Context context) {
        answer(context, "request", Query::options, PlanDoor::sizePads);
    }

    private interface Question<T> {
        Answer<T> ask(PlanDoor door, byte[] text, Format format, AnswerOptions options, Watch watch);
    }

    private <T> void answer(
            Context context, String subject, Function<Context, AnswerOptions> query, Question<T> question) {
        Negotiation.accept(context, Replies.JSON);
        AnswerOptions options = query.apply(context);
        Format format = Negotiation.format(context);
        readiness.check();
        byte[] text = body.read(context);
        Timing timing = Visit.of(context).timing();
        byte[] answer = workbench.run(timing, () -> {
            T model = judged(subject, question.ask(door.get(), text, format, options, timing));
            meters.judged(model);
            return Documents.json(model, false);
        });
        context.header(Timing.HEADER, timing.header());
        Replies.bytes(context, Replies.JSON, answer);
    }

    private static <T> T judged(String subject, Answer<T> answer) {
        if (answer instanceof Answer.Judged<T> judged) {
            return judged.model();
        }
        if (answer instanceof Answer.Unreadable<T> unreadable) {
            throw Refused.because(ProblemKind.UNREADABLE, "body", unreadable.faults());
        }
        if (answer instanceof Answer.Faulty<T> faulty) {
            throw Refused.because(ProblemKind.FAULTY, subject, faulty.faults());
        }
        throw new IllegalStateException("Unknown kind of answer");
    }
}
