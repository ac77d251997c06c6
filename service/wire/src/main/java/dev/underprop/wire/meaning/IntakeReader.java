package dev.underprop.wire.meaning;

import dev.underprop.api.model.IntakeAnswer;
import dev.underprop.engine.plan.Intake;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads what was answered on site. */
final class IntakeReader {

    private static final List<String> QUESTIONS =
            Arrays.stream(Intake.Question.values()).map(Intake.Question::words).toList();

    private final NameTable<Integer> loads;

    IntakeReader(NameTable<Integer> loads) {
        this.loads = loads;
    }

    Intake read(@Nullable List<IntakeAnswer> answers, Spot at) {
        Set<Intake.Question> seen = EnumSet.noneOf(Intake.Question.class);
        List<Intake.Answer> read = new ArrayList<>();
        for (int i = 0; answers != null && i < answers.size(); i++) {
            Spot spot = at.element(i);
            Text words = spot.text("question", answers.get(i).getQuestion());
            Optional<Intake.Question> question = words.choice(QUESTIONS).map(IntakeReader::question);
            if (question.isPresent() && !seen.add(question.get())) {
                words.spot().report(Messages.INTAKE_TWICE, words.value(), Fault.shown(words.value()));
            }
            answer(answers.get(i), question, spot).ifPresent(read::add);
        }
        return new Intake(read);
    }

    private Optional<Intake.Answer> answer(IntakeAnswer answer, Optional<Intake.Question> question, Spot at) {
        Optional<Intake.Reply> reply = at.text("answer", answer.getAnswer())
                .choice(List.of("yes", "no", "unknown"))
                .map(word -> Intake.Reply.valueOf(word.toUpperCase(Locale.ROOT)));
        Text load = at.text("load", answer.getLoad());
        if (load.given()) {
            loads.find(load.value(), load.spot());
            reportLoad(load, question, reply);
        }
        String note = at.text("note", answer.getNote()).value();
        return reply.flatMap(said -> question.map(asked -> new Intake.Answer(asked, said, load.value(), note)));
    }

    private static void reportLoad(Text load, Optional<Intake.Question> question, Optional<Intake.Reply> reply) {
        if (question.isPresent() && question.get().kind() != Intake.Kind.LOAD) {
            load.spot()
                    .report(
                            Messages.INTAKE_LOAD_FOREIGN,
                            load.value(),
                            question.get().words());
        } else if (reply.isPresent() && reply.get() != Intake.Reply.YES) {
            load.spot().report(Messages.INTAKE_LOAD_WITHOUT_YES, load.value());
        }
    }

    private static Intake.Question question(String words) {
        return Intake.Question.values()[QUESTIONS.indexOf(words)];
    }
}
