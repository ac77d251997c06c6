package dev.underprop.engine.assess;

import dev.underprop.engine.assess.SituationResult.ContactResult;
import dev.underprop.engine.assess.SituationResult.ContactState;
import dev.underprop.engine.assess.SituationResult.HandCheck;
import dev.underprop.engine.assess.SituationResult.MemberKind;
import dev.underprop.engine.assess.SituationResult.MemberResult;
import dev.underprop.engine.assess.SituationResult.PostResult;
import dev.underprop.engine.assess.SituationResult.Tipping;
import dev.underprop.engine.assess.SituationResult.Transfer;
import dev.underprop.engine.check.Bound;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.PlanVerdict;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Solution;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Reads a finished run and says what became of the situation. */
final class SituationJudge {

    private static final Citation NONE = Citation.remembered("common practice, no source", "", "no rule was applied");

    private static final Citation TRANSFER = Citation.remembered(
            "common practice, no source", "", "movement over distance against the damage limit of the plan");
    private static final Citation TIPS = Citation.remembered(
            "common practice, no source", "", "factor of safety 1.5 with 0.6 of the dead load that holds");

    private final SituationRun run;
    private final Situation before;
    private final boolean working;
    private final LeverRule leverRule;
    private final Map<Integer, double[]> byHand = new HashMap<>();

    /**
     * @param before the situation before this one, or one in which nothing is taken away
     * @param working whether calculation records are wanted
     */
    SituationJudge(SituationRun run, Situation before, boolean working) {
        this.run = run;
        this.before = before;
        this.working = working;
        this.leverRule = new LeverRule(run.model(), run.frame(), run.frame().taken(run.situation()));
    }

    SituationResult judge() {
        List<CheckResult> checks = new ArrayList<>();
        SituationResult.WhatIf whatIf = SituationResult.WhatIf.NOTHING;
        if (run.stands()) {
            RestraintJudge sideways = new RestraintJudge(run, working);
            TippingRule tips = new TippingRule(run, working);
            List<Tipping> tipping = tips.all();
            List<Transfer> transfers = run.seats().followed()
                    ? new Transfers(run.structure(), before, run.situation(), run.seats()).all()
                    : List.of();
            whatIf = new SituationResult.WhatIf(bearings(), transfers, tipping, sideways.forces(), run.hangsOnTies());
            checks.addAll(new MemberJudge(run, working).judge());
            checks.addAll(new ContactJudge(run, working).judge());
            addTipping(tips, tipping, checks);
            addTransfers(transfers, checks);
            checks.addAll(sideways.results());
            checks.addAll(CircumstanceJudge.intake(run.plan()));
            if (bearingRemoved()) {
                checks.add(CircumstanceJudge.lateral(run.plan()));
            }
            if (bearingRemoved() || run.plan().circumstances().excavation() instanceof Excavation.Cuts) {
                checks.addAll(CircumstanceJudge.excavation(run.plan()));
            }
            checks.addAll(withoutObject(checks));
        } else {
            checks.addAll(notReached());
        }
        checks.addAll(notBuilt());
        PlanVerdict verdict = run.stands() ? PlanVerdict.over(checks) : PlanVerdict.UNSTABLE;
        return new SituationResult(
                run.situation().name(),
                removed(),
                run.stability(),
                verdict,
                posts(),
                contacts(),
                members(),
                handChecks(),
                run.stands() ? run.plainCases() : List.of(),
                checks,
                whatIf,
                run.quality());
    }

    /** Names of what is taken away, whole or in part. */
    private List<String> removed() {
        Stream<String> bearings = Stream.concat(
                        run.situation().removed().stream(),
                        run.situation().parts().stream().map(Situation.Part::bearing))
                .distinct()
                .map(run.names()::bearing);
        Stream<String> piers =
                run.situation().piers().stream().map(pier -> run.names().pier(pier.bearing(), pier.pier()));
        return Stream.concat(bearings, piers).toList();
    }

    private void addTipping(TippingRule tips, List<Tipping> tipping, List<CheckResult> checks) {
        Set<String> seen = new HashSet<>();
        for (Tipping one : tipping) {
            if (seen.add(one.member())) {
                Finding finding =
                        new CheckResult.Judged(Measure.MOMENT, TippingRule.LEAST * one.tipping(), one.holding());
                CheckResult.Where where = new CheckResult.InCase(
                        run.situation().name(), one.combination(), "where it tips", Double.NaN, Bound.NONE);
                checks.add(new CheckResult(
                        CheckId.TIPPING,
                        one.member() + " over " + one.over(),
                        finding,
                        where,
                        TIPS,
                        tips.working(one).steps(finding)));
            }
        }
    }

    private void addTransfers(List<Transfer> transfers, List<CheckResult> checks) {
        if (!run.seats().followed()) {
            checks.add(plain(
                    CheckId.BEARING_TRANSFER,
                    new CheckResult.NotChecked(
                            "the floor does not stand as found without the shores, so what it carried before cannot be"
                                    + " followed")));
        }
        CheckResult.Where where = new CheckResult.InCase(
                run.situation().name(),
                "D",
                Cases.NO_LIVE,
                Double.NaN,
                new Bound(Setting.History.AS_FOUND.words(), "worst", "", Setting.Ties.HOLD.words()));
        for (Transfer one : transfers) {
            Working told = Working.when(working);
            Finding finding = transfer(one, told);
            checks.add(new CheckResult(
                    CheckId.BEARING_TRANSFER, one.name(), finding, where, TRANSFER, told.steps(finding)));
        }
    }

    private Finding transfer(Transfer one, Working told) {
        double slope = run.plan().circumstances().limits().transfer().slope();
        told.analysis("Δ", "goes down when it is taken away, " + one.place(), Dimension.LENGTH, one.movement());
        double demand = told.step("Δd", "downward", Dimension.LENGTH, Math.max(0, one.movement()), "max( 0 , Δ )");
        told.plan("x", "to the nearest that goes on carrying", Dimension.LENGTH, one.allowed() / slope);
        told.plan("i", "movement over distance that the limit allows", Dimension.NUMBER, slope);
        double allowed = told.step("Δa", "allowed there", Dimension.LENGTH, one.allowed(), "x × i");
        return told.compared("Δd", "Δa", new CheckResult.Judged(Measure.DEFLECTION, demand, allowed));
    }

    private List<SituationResult.BearingLoad> bearings() {
        List<SituationResult.BearingLoad> loads = new ArrayList<>();
        AsFound found = run.structure().found(Setting.Give.RIGID);
        Setting.History history = run.seats().followed() ? Setting.History.AS_FOUND : Setting.History.WISHED;
        Solution dead = run.seats().dead(Setting.Give.RIGID, history);
        for (int b = 0; b < run.plan().floor().bearings().size(); b++) {
            int bearing = b;
            Peaks peaks = run.met().bearings();
            double was = sum(c -> onBearing(c, bearing) ? found.force(c) : 0);
            double is = sum(c -> onBearing(c, bearing) ? dead.force(c) : 0);
            if (peaks.met(b) && !run.situation().removed().contains(b)) {
                Extreme greatest = run.occurrences().extreme(peaks.value(b), Double.NaN, peaks.caseOf(b));
                loads.add(new SituationResult.BearingLoad(
                        run.names().bearing(b), found.stands() ? was : Double.NaN, is, greatest));
            }
        }
        for (int c = 0; c < run.frame().contacts(); c++) {
            if (run.frame().places().get(c) instanceof ContactPlace.OnPier pier
                    && !run.frame().taken(c, run.situation())) {
                double was = found.stands() ? found.force(c) : Double.NaN;
                loads.add(new SituationResult.BearingLoad(
                        run.names().pier(pier.bearing(), pier.pier()), was, dead.force(c), greatest(c)));
            }
        }
        return loads;
    }

    private boolean onBearing(int contact, int bearing) {
        return run.frame().places().get(contact) instanceof ContactPlace.OnBearing seat && seat.bearing() == bearing;
    }

    private double sum(java.util.function.IntToDoubleFunction of) {
        return java.util.stream.IntStream.range(0, run.frame().contacts())
                .mapToDouble(of)
                .sum();
    }

    private boolean bearingRemoved() {
        return run.situation().takesAway();
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
        Set<CheckId> found = EnumSet.noneOf(CheckId.class);
        made.forEach(one -> found.add(one.id()));
        return CheckId.required(bearingRemoved()).stream()
                .filter(id -> id.built() && !found.contains(id))
                .map(id -> plain(id, new CheckResult.NotApplicable("nothing of this kind is in the situation")))
                .toList();
    }

    private CheckResult plain(CheckId id, CheckResult.Finding finding) {
        return new CheckResult(id, "plan", finding, new CheckResult.NoCase(), NONE);
    }

    private List<PostResult> posts() {
        List<PostResult> posts = new ArrayList<>();
        for (int c = 0; c < run.frame().contacts(); c++) {
            if (run.stands() && run.frame().places().get(c) instanceof ContactPlace.OnPost head) {
                posts.add(post(c, head));
            }
        }
        return posts;
    }

    private PostResult post(int c, ContactPlace.OnPost head) {
        int governing = run.met().greatest().caseOf(c);
        LoadCase loadCase = run.occurrences().caseOf(governing).load();
        return new PostResult(
                head,
                run.names().contact(head),
                greatest(c),
                least(c),
                run.movement(c, governing),
                byHand.computeIfAbsent(governing, k -> leverRule.loads(run.expand(loadCase)))[c],
                run.occurrences()
                        .extreme(
                                run.met().factored().value(c),
                                Double.NaN,
                                run.met().factored().caseOf(c)),
                run.seats().followed() ? run.met().greatest(c, Setting.History.AS_FOUND) : Double.NaN,
                run.met().greatest(c, Setting.History.WISHED));
    }

    private Extreme greatest(int c) {
        Peaks peaks = run.met().greatest();
        return run.occurrences().extreme(peaks.value(c), Double.NaN, peaks.caseOf(c));
    }

    private Extreme least(int c) {
        Peaks peaks = run.met().least();
        return run.occurrences().extreme(-peaks.value(c), Double.NaN, peaks.caseOf(c));
    }

    private List<ContactResult> contacts() {
        List<ContactResult> contacts = new ArrayList<>();
        for (int c = 0; run.stands() && c < run.frame().contacts(); c++) {
            ContactPlace place = run.frame().places().get(c);
            if (run.frame().taken(c, run.situation())) {
                continue;
            }
            ContactState state = !run.met().everOpen(c)
                    ? ContactState.CLOSED
                    : run.met().everClosed(c) ? ContactState.VARIES : ContactState.OPEN;
            contacts.add(new ContactResult(place, run.names().contact(place), state, greatest(c), least(c)));
        }
        return contacts;
    }

    private List<MemberResult> members() {
        List<MemberResult> members = new ArrayList<>();
        int joists = run.plan().floor().joists().size();
        int beams = joists + run.plan().shores().size();
        for (int m = 0; run.stands() && m < run.members().size(); m++) {
            Peaks extremes = run.members().get(m).extremes();
            members.add(new MemberResult(
                    run.names().member(m),
                    m < joists ? MemberKind.JOIST : m < beams ? MemberKind.BEAM : MemberKind.GIRDER,
                    extreme(extremes, MemberRun.SAGGING),
                    extreme(extremes, MemberRun.HOGGING),
                    extreme(extremes, MemberRun.SHEAR),
                    extreme(extremes, MemberRun.DEFLECTION)));
        }
        return members;
    }

    private Extreme extreme(Peaks extremes, int slot) {
        return extremes.met(slot)
                ? run.occurrences().extreme(extremes.value(slot), extremes.at(slot), extremes.caseOf(slot))
                : new Extreme(0, Double.NaN, "", "", Bound.NONE);
    }

    /** Lever-rule figures in the case that moved, or under all dead and live load where everything stands. */
    private List<HandCheck> handChecks() {
        LoadCase loadCase = run.stands() ? fullest().load() : run.failedCase();
        String combination = run.stands() ? fullest().name() : ((SituationResult.Moves) run.stability()).combination();
        double[] loads = leverRule.loads(run.expand(loadCase));
        List<HandCheck> figures = new ArrayList<>();
        for (int c = 0; c < loads.length; c++) {
            boolean taken = run.frame().taken(c, run.situation());
            if (!taken && !(run.frame().places().get(c) instanceof ContactPlace.OnShore)) {
                figures.add(
                        new HandCheck(run.names().contact(run.frame().places().get(c)), loads[c], combination));
            }
        }
        return figures;
    }

    private Cases.Case fullest() {
        Cases.Case fullest = run.cases().get(0);
        for (Cases.Case one : run.cases()) {
            if (one.level() == Cases.Level.ALLOWABLE
                    && one.everywhere()
                    && one.load().size() > fullest.load().size()) {
                fullest = one;
            }
        }
        return fullest;
    }
}
