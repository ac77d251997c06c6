package dev.underprop.engine.lift;

import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.SituationResult;
import dev.underprop.engine.check.MemberLimits;
import dev.underprop.engine.clause.asce7_16.Combination;
import dev.underprop.engine.clause.asce7_16.LoadKind;
import dev.underprop.engine.clause.asce7_16.Section2_4;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The turns of a lift as situations of its plan, assessed by the door for layouts, and judged here by hand: posts by the
 * table, contacts, slopes, and bending by cutting members open. Nothing of the planner's own is asked but the turns.
 */
final class Replay {

    private static final double RIGHT = 1 + 1e-6;

    private final RandomLifts.Lift lift;
    private final JobPlan plan;
    private final List<SituationResult> situations;
    private final List<double[]> raised = new ArrayList<>();
    private final List<Integer> stageEnds = new ArrayList<>();
    private final List<String> broken = new ArrayList<>();
    private double[] before = {};
    private int looked;

    Replay(RandomLifts.Lift lift, LiftPlan answer) {
        this.lift = lift;
        this.plan = lift.plan();
        int posts = plan.shores().get(0).posts().size();
        List<Situation> all = new ArrayList<>();
        all.add(new Situation("snug", List.of(), List.of()));
        double[] now = new double[posts];
        raised.add(now.clone());
        all.add(at("start", now));
        for (LiftPlan.Stage stage : answer.stages()) {
            for (LiftPlan.Turn turn : stage.turns()) {
                now[turn.post()] += turn.raise();
                raised.add(now.clone());
                all.add(at("turn " + raised.size(), now));
            }
            stageEnds.add(raised.size() - 1);
        }
        Assessment assessment = Assessor.assess(
                new JobPlan(plan.basis(), plan.floor(), plan.shores(), plan.ground(), all, plan.circumstances()));
        this.situations = assessment.situations();
    }

    private Situation at(String name, double[] raise) {
        List<Situation.PostLift> lifts = new ArrayList<>();
        for (int p = 0; p < raise.length; p++) {
            lifts.add(new Situation.PostLift(0, p, raise[p]));
        }
        return new Situation(name, lift.request().during().removed(), lifts);
    }

    /** How far the posts are raised in the end (m). */
    double[] end() {
        return raised.get(raised.size() - 1);
    }

    int looked() {
        return looked;
    }

    /** What any turn breaks, in words. */
    List<String> broken() {
        before = values(situations.get(1), raised.get(0));
        double[] allowed = allowed();
        for (int k = 1; k < raised.size(); k++) {
            double[] after = values(situations.get(k + 1), raised.get(k));
            for (int i = 0; i < after.length; i++) {
                looked++;
                if (after[i] > allowed[i] * RIGHT && after[i] > before[i] * RIGHT) {
                    broken.add("turn " + k + ": value " + i + " is " + after[i] + ", allowed " + allowed[i]);
                }
            }
            before = after;
        }
        stages();
        return broken;
    }

    /** Once a stage is done posts are held against the greatest load that any pattern of live load brings them. */
    private void stages() {
        double[] begun = patterned(0);
        for (int k : stageEnds) {
            double[] after = patterned(k);
            for (int p = 0; p < after.length; p++) {
                looked++;
                double allowed = lift.request().limits().ratios().post();
                if (after[p] > allowed * RIGHT && after[p] > begun[p] * RIGHT) {
                    broken.add("after turn " + k + ": post " + p + " is used by " + after[p] + " under patterns");
                }
            }
            begun = after;
        }
    }

    private double[] patterned(int state) {
        List<Post> posts = plan.shores().get(0).posts();
        double[] used = new double[posts.size()];
        for (int p = 0; p < used.length; p++) {
            double load = situations.get(state + 1).posts().get(p).asFound();
            used[p] = load / rating(posts.get(p), raised.get(state)[p]);
        }
        return used;
    }

    private double[] allowed() {
        int posts = end().length;
        List<Double> allowed = new ArrayList<>();
        for (int p = 0; p < posts; p++) {
            allowed.add(lift.request().limits().ratios().post());
        }
        for (int c = 0; c < contacts().size(); c++) {
            allowed.add(stays(contacts().get(c).place()) ? 1.1e-5 : Double.POSITIVE_INFINITY);
        }
        allowed.add(lift.request().limits().ratios().beam());
        for (int j = 0; j < plan.floor().joists().size(); j++) {
            allowed.add(lift.request().limits().ratios().joist());
        }
        double slope = lift.request().limits().slope().value();
        int pairs = posts - 1 + 2 * plan.floor().joists().size();
        for (int i = 0; i < pairs; i++) {
            allowed.add(Double.isNaN(slope) ? Double.POSITIVE_INFINITY : slope);
        }
        return allowed.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private List<SituationResult.ContactResult> contacts() {
        return situations.get(0).contacts();
    }

    private boolean stays(ContactPlace place) {
        return place instanceof ContactPlace.OnBearing seat
                && !lift.request().limits().mayLeave().contains(seat.bearing())
                && !lift.request().during().removed().contains(seat.bearing());
    }

    private double[] values(SituationResult one, double[] raise) {
        if (!one.stands()) {
            throw new AssertionError(one.name() + " does not stand: " + one.stability());
        }
        List<Double> values = new ArrayList<>();
        List<Post> posts = plan.shores().get(0).posts();
        for (int p = 0; p < posts.size(); p++) {
            double load = 0;
            for (SituationResult.PlainCase plain : plain(one)) {
                load = Math.max(load, plain.forces().get(contact(p)));
            }
            values.add(load / rating(posts.get(p), raise[p]));
        }
        SituationResult.PlainCase dead = plain(one).get(0);
        for (int c = 0; c < contacts().size(); c++) {
            double opening = 0;
            for (SituationResult.PlainCase plain : plain(one)) {
                opening = Math.max(opening, plain.openings().get(c));
            }
            values.add(opening);
        }
        values.add(bent(one, plan.floor().joists().size()));
        for (int j = 0; j < plan.floor().joists().size(); j++) {
            values.add(bent(one, j));
        }
        values.addAll(slopes(dead, plain(situations.get(0)).get(0)));
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private int contact(int post) {
        for (int c = 0; c < contacts().size(); c++) {
            if (contacts().get(c).place() instanceof ContactPlace.OnPost head && head.post() == post) {
                return c;
            }
        }
        throw new AssertionError("a post without a contact");
    }

    /** The table's taller row holds between two rows. */
    private static double rating(Post post, double raise) {
        PostType.Table table = (PostType.Table) ((PostType) post.type()).rating();
        return table.rows().stream()
                .filter(r -> r.height() >= post.height() + raise)
                .findFirst()
                .orElseThrow()
                .load();
    }

    /**
     * Plain cases of the history as found with posts rigid, dead load alone first, live load everywhere; only those with all of
     * dead load.
     */
    private static List<SituationResult.PlainCase> plain(SituationResult one) {
        return one.plainCases().stream()
                .filter(p -> p.bound().history().equals("as found"))
                .filter(p -> p.combination().startsWith("D"))
                .toList();
    }

    private List<Double> slopes(SituationResult.PlainCase now, SituationResult.PlainCase then) {
        List<Double> slopes = new ArrayList<>();
        List<SituationResult.ContactResult> contacts = contacts();
        for (int a = 0; a < contacts.size(); a++) {
            for (int b = 0; b < contacts.size(); b++) {
                double distance =
                        neighbours(contacts.get(a).place(), contacts.get(b).place());
                if (distance > 0) {
                    double one = now.movements().get(a) - then.movements().get(a);
                    double other = now.movements().get(b) - then.movements().get(b);
                    slopes.add(Math.abs(one - other) / distance);
                }
            }
        }
        return slopes;
    }

    /** Distance of two neighbours of which the first comes first; 0 where they are none. */
    private double neighbours(ContactPlace a, ContactPlace b) {
        List<Bearing> bearings = plan.floor().bearings();
        double shore = plan.shores().get(0).y();
        if (a instanceof ContactPlace.OnPost one
                && b instanceof ContactPlace.OnPost two
                && two.post() == one.post() + 1) {
            List<Post> posts = plan.shores().get(0).posts();
            return posts.get(two.post()).x() - posts.get(one.post()).x();
        }
        if (a instanceof ContactPlace.OnBearing one
                && b instanceof ContactPlace.OnShore two
                && one.joist() == two.joist()
                && one.bearing() == 0) {
            return shore - bearings.get(0).y();
        }
        return a instanceof ContactPlace.OnShore one
                        && b instanceof ContactPlace.OnBearing two
                        && one.joist() == two.joist()
                        && two.bearing() == 1
                ? bearings.get(1).y() - shore
                : 0;
    }

    /** Bending stress over what is allowed, in the worst plain case, by cutting a member at a thousand places. */
    private double bent(SituationResult one, int m) {
        Set<LoadKind> kinds = EnumSet.of(LoadKind.DEAD);
        if (((Load.Across) plan.floor().loads().get(1)).intensity().snow() > 0) {
            kinds.add(LoadKind.SNOW);
        }
        if (((Load.Area) plan.floor().loads().get(0)).intensity().live() > 0) {
            kinds.add(LoadKind.LIVE);
        }
        List<Combination> combinations = Section2_4.gravity(kinds);
        MemberLimits limits = MemberLimits.of(plan, lift.request().during(), m, combinations);
        double worst = 0;
        for (SituationResult.PlainCase plain : plain(one)) {
            int c = named(combinations, plain.combination());
            double live = combinations.get(c).factor(LoadKind.LIVE);
            double snow = combinations.get(c).factor(LoadKind.SNOW);
            double[] extremes = m < plan.floor().joists().size() ? joist(plain, m, live, snow) : beam(plain);
            worst = Math.max(worst, limits.bendingStress(extremes[0]) / limits.sagging(c));
            worst = Math.max(worst, limits.bendingStress(extremes[1]) / limits.hogging(c));
        }
        return worst;
    }

    private static int named(List<Combination> combinations, String name) {
        for (int c = 0; c < combinations.size(); c++) {
            if (combinations.get(c).name().equals(name)) {
                return c;
            }
        }
        throw new AssertionError("no combination is called " + name);
    }

    private double[] beam(SituationResult.PlainCase one) {
        Shore shore = plan.shores().get(0);
        List<double[]> forces = new ArrayList<>();
        for (int c = 0; c < contacts().size(); c++) {
            ContactPlace place = contacts().get(c).place();
            if (place instanceof ContactPlace.OnShore seat) {
                forces.add(new double[] {
                    plan.floor().joists().get(seat.joist()).x(), -one.forces().get(c)
                });
            } else if (place instanceof ContactPlace.OnPost head) {
                forces.add(new double[] {
                    shore.posts().get(head.post()).x(), one.forces().get(c)
                });
            }
        }
        return cut(shore.start(), shore.end(), shore.beam().weight(), forces);
    }

    private double[] joist(SituationResult.PlainCase one, int j, double live, double snow) {
        var joist = plan.floor().joists().get(j);
        List<double[]> forces = new ArrayList<>();
        for (int c = 0; c < contacts().size(); c++) {
            ContactPlace place = contacts().get(c).place();
            if (place instanceof ContactPlace.OnShore seat && seat.joist() == j) {
                forces.add(new double[] {plan.shores().get(0).y(), one.forces().get(c)});
            } else if (place instanceof ContactPlace.OnBearing seat && seat.joist() == j) {
                forces.add(new double[] {
                    plan.floor().bearings().get(seat.bearing()).y(),
                    one.forces().get(c)
                });
            }
        }
        // What presses up in all must be what lies on the joist: the wall's share is what the area does not bring.
        Member member = joist.member();
        var area = ((Load.Area) plan.floor().loads().get(0)).intensity();
        double uniform = member.weight() + (area.dead() + live * area.live()) * width(j);
        double up = forces.stream().mapToDouble(f -> f[1]).sum();
        forces.add(new double[] {0.1, -(up - uniform * joist.length())});
        double wall = ((Load.Across) plan.floor().loads().get(1)).intensity().dead()
                + snow * ((Load.Across) plan.floor().loads().get(1)).intensity().snow();
        if (Math.abs(up - uniform * joist.length() - wall * width(j)) > 1e-6 * up + 1) {
            throw new AssertionError("the loads and forces of a joist do not balance");
        }
        return cut(joist.start(), joist.end(), uniform, forces);
    }

    private double width(int j) {
        var joists = plan.floor().joists();
        double left = j > 0 ? (joists.get(j).x() - joists.get(j - 1).x()) / 2 : 0;
        double right =
                j + 1 < joists.size() ? (joists.get(j + 1).x() - joists.get(j).x()) / 2 : 0;
        return left + right;
    }

    private static double[] cut(double from, double to, double uniform, List<double[]> forces) {
        double sagging = 0;
        double hogging = 0;
        int cuts = 1000;
        for (int i = 0; i <= cuts; i++) {
            double at = from + (to - from) * i / cuts;
            double moment = -uniform * (at - from) * (at - from) / 2;
            for (double[] force : forces) {
                moment += force[0] < at ? force[1] * (at - force[0]) : 0;
            }
            sagging = Math.max(sagging, moment);
            hogging = Math.max(hogging, -moment);
        }
        return new double[] {sagging, hogging};
    }
}
