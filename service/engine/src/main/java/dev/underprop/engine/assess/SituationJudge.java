package dev.underprop.engine.assess;

import dev.underprop.engine.assess.SituationResult.ContactResult;
import dev.underprop.engine.assess.SituationResult.ContactState;
import dev.underprop.engine.assess.SituationResult.HandCheck;
import dev.underprop.engine.assess.SituationResult.MemberResult;
import dev.underprop.engine.assess.SituationResult.PostResult;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.statics.LoadCase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads a finished run and says what became of the situation. */
final class SituationJudge {

    private static final Citation NONE = Citation.remembered("common practice, no source", "", "no rule was applied");

    private final SituationRun run;
    private final LeverRule leverRule;
    private final Map<Integer, double[]> byHand = new HashMap<>();

    SituationJudge(SituationRun run) {
        this.run = run;
        this.leverRule = new LeverRule(run.plan(), run.model(), run.frame());
    }

    SituationResult judge() {
        List<CheckResult> checks = new ArrayList<>();
        if (run.stands()) {
            checks.addAll(new MemberJudge(run).judge());
            checks.addAll(new ContactJudge(run).judge());
            checks.addAll(withoutObject(checks));
        } else {
            checks.addAll(notReached());
        }
        checks.addAll(notBuilt());
        PlanVerdict verdict = run.stands() ? PlanVerdict.over(checks) : PlanVerdict.UNSTABLE;
        return new SituationResult(
                run.situation().name(),
                run.situation().removed().stream().map(run.names()::bearing).toList(),
                run.stability(),
                verdict,
                posts(),
                contacts(),
                members(),
                handChecks(),
                run.stands() ? run.plainCases() : List.of(),
                checks,
                run.quality());
    }

    private boolean bearingRemoved() {
        return !run.situation().removed().isEmpty();
    }

    /** Every required check that this version cannot make, by name. */
    private List<CheckResult> notBuilt() {
        return CheckId.required(bearingRemoved()).stream()
                .filter(id -> !id.built())
                .map(id -> plain(id, new CheckResult.NotChecked("this version does not make this check")))
                .toList();
    }

    /** Every built check, where the structure does not stand and numbers would mean nothing. */
    private List<CheckResult> notReached() {
        return CheckId.required(bearingRemoved()).stream()
                .filter(CheckId::built)
                .map(id -> plain(id, new CheckResult.NotChecked("the structure does not stand in this situation")))
                .toList();
    }

    /** Built checks that found no object at all: not applicable, said once. */
    private List<CheckResult> withoutObject(List<CheckResult> made) {
        return CheckId.required(bearingRemoved()).stream()
                .filter(id -> id.built() && made.stream().noneMatch(r -> r.id() == id))
                .map(id -> plain(id, new CheckResult.NotApplicable("nothing of this kind is in the situation")))
                .toList();
    }

    private CheckResult plain(CheckId id, CheckResult.Finding finding) {
        return new CheckResult(id, "plan", finding, new CheckResult.NoCase(), NONE);
    }

    private List<PostResult> posts() {
        List<PostResult> posts = new ArrayList<>();
        for (int c = 0; c < run.frame().places().size(); c++) {
            if (run.stands() && run.frame().places().get(c) instanceof ContactPlace.OnPost head) {
                posts.add(post(c, head));
            }
        }
        return posts;
    }

    private PostResult post(int c, ContactPlace.OnPost head) {
        int governing = run.greatest().caseOf(c);
        LoadCase loadCase = run.cases().cases().get(governing).load();
        return new PostResult(
                head,
                run.names().contact(head),
                greatest(c),
                least(c),
                run.movement(c, governing),
                byHand.computeIfAbsent(governing, k -> leverRule.loads(run.expand(loadCase)))[c]);
    }

    private Extreme greatest(int c) {
        return run.extreme(run.greatest().value(c), Double.NaN, run.greatest().caseOf(c));
    }

    private Extreme least(int c) {
        return run.extreme(-run.least().value(c), Double.NaN, run.least().caseOf(c));
    }

    private List<ContactResult> contacts() {
        List<ContactResult> contacts = new ArrayList<>();
        for (int c = 0; run.stands() && c < run.frame().places().size(); c++) {
            ContactPlace place = run.frame().places().get(c);
            ContactState state = !run.everOpen(c)
                    ? ContactState.CLOSED
                    : run.everClosed(c) ? ContactState.VARIES : ContactState.OPEN;
            contacts.add(new ContactResult(place, run.names().contact(place), state, greatest(c), least(c)));
        }
        return contacts;
    }

    private List<MemberResult> members() {
        List<MemberResult> members = new ArrayList<>();
        int joists = run.plan().floor().joists().size();
        for (int m = 0; run.stands() && m < run.members().size(); m++) {
            Peaks extremes = run.members().get(m).extremes();
            members.add(new MemberResult(
                    run.names().member(m),
                    m >= joists,
                    extreme(extremes, MemberRun.SAGGING),
                    extreme(extremes, MemberRun.HOGGING),
                    extreme(extremes, MemberRun.SHEAR),
                    extreme(extremes, MemberRun.DEFLECTION)));
        }
        return members;
    }

    private Extreme extreme(Peaks extremes, int slot) {
        return extremes.met(slot)
                ? run.extreme(extremes.value(slot), extremes.at(slot), extremes.caseOf(slot))
                : new Extreme(0, Double.NaN, "", "");
    }

    /** Lever-rule figures in the case that moved, or under all dead and live load where everything stands. */
    private List<HandCheck> handChecks() {
        LoadCase loadCase = run.stands() ? fullest().load() : run.failedCase();
        String combination = run.stands()
                ? run.cases().combinations().get(fullest().combination()).name()
                : ((SituationResult.Moves) run.stability()).combination();
        double[] loads = leverRule.loads(run.expand(loadCase));
        List<HandCheck> figures = new ArrayList<>();
        for (int c = 0; c < loads.length; c++) {
            if (!(run.frame().places().get(c) instanceof ContactPlace.OnShore)) {
                figures.add(
                        new HandCheck(run.names().contact(run.frame().places().get(c)), loads[c], combination));
            }
        }
        return figures;
    }

    private Cases.Case fullest() {
        Cases.Case fullest = run.cases().cases().get(0);
        for (Cases.Case one : run.cases().cases()) {
            if (one.everywhere() && one.load().size() > fullest.load().size()) {
                fullest = one;
            }
        }
        return fullest;
    }
}
