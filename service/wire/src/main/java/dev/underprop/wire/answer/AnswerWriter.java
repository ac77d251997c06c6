package dev.underprop.wire.answer;

import dev.underprop.api.model.Advisory;
import dev.underprop.api.model.BasisEditions;
import dev.underprop.api.model.Counts;
import dev.underprop.api.model.DocumentKind;
import dev.underprop.api.model.EngineVersion;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.Post;
import dev.underprop.api.model.Severity;
import dev.underprop.engine.Engine;
import dev.underprop.engine.assess.Assessment;
import dev.underprop.wire.Version;
import java.util.List;
import java.util.stream.Stream;

/** Writes the two answers to a plan. */
public final class AnswerWriter {

    private final Question question;
    private final Assessment assessment;
    private final CheckWriter checks;
    private final SituationWriter situations;

    /**
     * @param question what was asked
     * @param assessment what the engine found
     */
    public AnswerWriter(Question question, Assessment assessment) {
        this.question = question;
        this.assessment = assessment;
        Figures figures = new Figures(question.units());
        this.checks = new CheckWriter(figures, question.full(), question.working());
        this.situations = new SituationWriter(question.plan(), postNames(question.model()), figures);
    }

    private static List<String> postNames(JobPlan model) {
        return model.getShores().stream()
                .flatMap(shore -> shore.getPosts().stream())
                .map(Post::getName)
                .toList();
    }

    /** Forces, movements and checks, situation by situation. */
    public LayoutAnalysis analysis() {
        LayoutAnalysis model = new LayoutAnalysis()
                .document(DocumentKind.LAYOUT_ANALYSIS)
                .engine(engine())
                .basis(basis())
                .planDigest(question.planDigest())
                .catalogueDigest(question.catalogueDigest())
                .verdict(verdict())
                .headline(Headline.of(assessment))
                .notChecked(checks.notChecked(assessment))
                .cautions(Cautions.ALL)
                .assumptions(assumptions())
                .advisories(advisories())
                .counts(counts())
                .layout(new LayoutWriter(new Figures(question.units())).lines(question.plan()))
                .situations(assessment.situations().stream()
                        .map(one -> situations.whole(one, question.full()))
                        .toList())
                .checks(checks.checks(assessment));
        model.setId(question.model().getId());
        model.setTitle(question.model().getTitle());
        return model;
    }

    /** One verdict over everything the plan contains. */
    public PlanCheck check() {
        PlanCheck model = verdictAlone()
                .headline(Headline.of(assessment))
                .notChecked(checks.notChecked(assessment))
                .assumptions(assumptions())
                .advisories(advisories())
                .situations(
                        assessment.situations().stream().map(situations::brief).toList())
                .checks(checks.checks(assessment));
        model.setTitle(question.model().getTitle());
        return model;
    }

    /** The same verdict and numbers, and nothing in words but the cautions. */
    public PlanCheck brief() {
        return verdictAlone().checks(checks.numbers(assessment));
    }

    private PlanCheck verdictAlone() {
        PlanCheck model = new PlanCheck()
                .document(DocumentKind.PLAN_CHECK)
                .engine(engine())
                .basis(basis())
                .planDigest(question.planDigest())
                .catalogueDigest(question.catalogueDigest())
                .verdict(verdict())
                .cautions(Cautions.ALL)
                .counts(counts());
        model.setId(question.model().getId());
        return model;
    }

    /** Name and version of what computes. */
    public static EngineVersion engine() {
        return new EngineVersion().name(Engine.NAME).version(Version.number());
    }

    private BasisEditions basis() {
        return new BasisEditions()
                .name(question.plan().basis().name())
                .editions(question.plan().basis().editions());
    }

    private PlanVerdict verdict() {
        return PlanVerdict.fromValue(assessment.verdict().name());
    }

    private List<String> assumptions() {
        return Stream.concat(assessment.assumptions().stream(), question.assumptions().stream())
                .toList();
    }

    private List<Advisory> advisories() {
        return assessment.advisories().stream().map(AnswerWriter::advisory).toList();
    }

    private static Advisory advisory(Assessment.Advisory advisory) {
        Advisory model = new Advisory()
                .code(advisory.code())
                .severity(Severity.fromValue(advisory.severity().name()))
                .message(advisory.message())
                .source(advisory.source());
        return advisory.place().isEmpty() ? model : model.place(advisory.place());
    }

    private Counts counts() {
        Assessment.Counts counts = assessment.counts();
        return new Counts()
                .joists(question.plan().floor().joists().size())
                .shores(question.plan().shores().size())
                .posts(question.plan().shores().stream()
                        .mapToInt(shore -> shore.posts().size())
                        .sum())
                .situations(counts.situations())
                .combinations(counts.combinations())
                .patterns(counts.patterns())
                .bounds(counts.bounds())
                .cases(counts.cases())
                .contactStates(counts.factorised())
                .solves(solves());
    }

    /** Every case is solved at least once, and again for every set of contacts that did not hold. */
    private int solves() {
        return assessment.situations().stream()
                .mapToInt(one -> one.quality().cases() + one.quality().changes())
                .sum();
    }
}
