package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;

/** The same plan seen in a mirror, under other loads, or in other situations. */
final class Changed {

    private Changed() {}

    /** Places along x counted from the other end. Nothing may have gaps, which go by the number of a joist. */
    static JobPlan mirrored(JobPlan plan) {
        List<Joist> joists = new ArrayList<>();
        for (Joist j : plan.floor().joists()) {
            joists.add(new Joist(j.name(), -j.x(), j.start(), j.length(), j.member()));
        }
        Collections.reverse(joists);
        List<Shore> shores = new ArrayList<>();
        for (Shore s : plan.shores()) {
            List<Post> posts = new ArrayList<>();
            for (Post p : s.posts()) {
                posts.add(new Post(
                        p.name(), -p.x(), p.height(), p.stiffness(), p.gap(), p.lift(), p.type(), p.footing()));
            }
            Collections.reverse(posts);
            shores.add(new Shore(s.name(), s.y(), s.beam(), -s.end(), s.length(), List.of(), posts));
        }
        List<Load> loads = plan.floor().loads().stream().map(Changed::mirrored).toList();
        Floor floor =
                new Floor(joists, plan.floor().bearings(), loads, plan.floor().joistWeight());
        return new JobPlan(plan.basis(), floor, shores, plan.ground(), plan.situations(), plan.circumstances());
    }

    private static Load mirrored(Load load) {
        if (load instanceof Load.Area a) {
            return new Load.Area(a.name(), a.intensity(), -a.toX(), -a.fromX(), a.fromY(), a.toY());
        }
        if (load instanceof Load.Across a) {
            return new Load.Across(a.name(), a.intensity(), a.y(), -a.to(), -a.from());
        }
        if (load instanceof Load.Along a) {
            return new Load.Along(a.name(), a.intensity(), -a.x(), a.from(), a.to());
        }
        Load.Point p = (Load.Point) load;
        return new Load.Point(p.name(), p.intensity(), -p.x(), p.y());
    }

    /** All loads and weights times k. */
    static JobPlan scaled(JobPlan plan, double k) {
        List<Joist> joists = plan.floor().joists().stream()
                .map(j -> new Joist(j.name(), j.x(), j.start(), j.length(), weighing(j.member(), k)))
                .toList();
        List<Shore> shores = plan.shores().stream()
                .map(s -> new Shore(s.name(), s.y(), weighing(s.beam(), k), s.start(), s.length(), s.gaps(), s.posts()))
                .toList();
        Floor floor = new Floor(
                joists,
                plan.floor().bearings(),
                loads(plan, i -> new Intensity(k * i.dead(), k * i.live(), k * i.roofLive(), k * i.snow())),
                plan.floor().joistWeight());
        return new JobPlan(plan.basis(), floor, shores, plan.ground(), plan.situations(), plan.circumstances());
    }

    private static Member weighing(Member m, double k) {
        return new Member(m.label(), m.ply(), m.plies(), m.grade(), m.nominal(), m.moisture(), k * m.weight());
    }

    /** Snow beside the other loads. */
    static JobPlan snow(JobPlan plan, double part) {
        Floor floor = new Floor(
                plan.floor().joists(),
                plan.floor().bearings(),
                loads(plan, i -> new Intensity(i.dead(), i.live(), i.roofLive(), i.snow() + part * i.dead())),
                plan.floor().joistWeight());
        return new JobPlan(plan.basis(), floor, plan.shores(), plan.ground(), plan.situations(), plan.circumstances());
    }

    /** The same posts with another stiffness. */
    static JobPlan stiffness(JobPlan plan, Post.Stiffness stiffness) {
        List<Shore> shores = plan.shores().stream()
                .map(s -> new Shore(
                        s.name(),
                        s.y(),
                        s.beam(),
                        s.start(),
                        s.length(),
                        s.gaps(),
                        s.posts().stream()
                                .map(p -> new Post(
                                        p.name(),
                                        p.x(),
                                        p.height(),
                                        stiffness,
                                        p.gap(),
                                        p.lift(),
                                        p.type(),
                                        p.footing()))
                                .toList()))
                .toList();
        return new JobPlan(plan.basis(), plan.floor(), shores, plan.ground(), plan.situations(), plan.circumstances());
    }

    /** Live loads times k. */
    static JobPlan live(JobPlan plan, double k) {
        Floor floor = new Floor(
                plan.floor().joists(),
                plan.floor().bearings(),
                loads(plan, i -> new Intensity(i.dead(), k * i.live(), i.roofLive(), i.snow())),
                plan.floor().joistWeight());
        return new JobPlan(plan.basis(), floor, plan.shores(), plan.ground(), plan.situations(), plan.circumstances());
    }

    private static List<Load> loads(JobPlan plan, UnaryOperator<Intensity> change) {
        return plan.floor().loads().stream().map(l -> with(l, change)).toList();
    }

    private static Load with(Load load, UnaryOperator<Intensity> change) {
        Intensity value = change.apply(load.intensity());
        if (load instanceof Load.Area a) {
            return new Load.Area(a.name(), value, a.fromX(), a.toX(), a.fromY(), a.toY());
        }
        if (load instanceof Load.Across a) {
            return new Load.Across(a.name(), value, a.y(), a.from(), a.to());
        }
        if (load instanceof Load.Along a) {
            return new Load.Along(a.name(), value, a.x(), a.from(), a.to());
        }
        Load.Point p = (Load.Point) load;
        return new Load.Point(p.name(), value, p.x(), p.y());
    }

    static JobPlan situations(JobPlan plan, List<Situation> situations) {
        return new JobPlan(plan.basis(), plan.floor(), plan.shores(), plan.ground(), situations, plan.circumstances());
    }
}
