package dev.underprop.wire.meaning;

import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.Lift;
import dev.underprop.api.model.LiftJack;
import dev.underprop.api.model.LiftPoint;
import dev.underprop.api.model.LiftReading;
import dev.underprop.api.model.LiftTarget;
import dev.underprop.api.model.LiftTurned;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads how a floor is to be raised. */
final class LiftReader {

    private static final String UNDER_LOAD = "turned under load";
    private static final String BY_JACK = "jack beside the post";

    private final Lift lift;
    private final Spot at;
    private final NameTable<Integer> posts;
    private final NameTable<Integer> bearings;
    private final NameTable<Integer> situations;
    private final List<String> postNames;
    private final PostsReader stands;

    private LiftReader(Lift lift, Spot at, JobPlan model, List<ShoreDraft> shores, PostsReader stands) {
        this.stands = stands;
        this.lift = lift;
        this.at = at;
        this.postNames = shores.stream()
                .flatMap(s -> s.posts().stream())
                .map(PostDraft::name)
                .toList();
        this.posts = NameTable.indexed("post", postNames);
        this.bearings = NameTable.indexed(
                "bearing",
                model.getFloor().getBearings().stream().map(b -> b.getName()).toList());
        this.situations = NameTable.indexed(
                "situation",
                model.getSituations().stream().map(s -> s.getName()).toList());
    }

    /** The lift of a plan; empty where it asks for none. */
    static Optional<LiftDraft> read(JobPlan model, Spot at, List<ShoreDraft> shores, PostsReader stands) {
        Lift lift = model.getLift();
        return lift == null ? Optional.empty() : new LiftReader(lift, at, model, shores, stands).read();
    }

    private Optional<LiftDraft> read() {
        int before = at.findings().list().size();
        List<LiftJacksReader.Draft> jacks = jacks();
        int during = situations.find(lift.getDuring(), at.member("during")).orElse(-1);
        double tolerance = at.text("tolerance", lift.getTolerance()).quantity(Range.READING);
        double hold = at.text("hold", lift.getHold()).quantity(Range.HOLD);
        List<LiftDraft.LiftPointDraft> points = points();
        Optional<LiftRequest.Target> target = target(lift.getTarget());
        LiftLimitsReader limits = new LiftLimitsReader(at.member("limits"), bearings);
        var read = limits.read(lift.getLimits(), hold);
        var screws = new LiftScrewsReader(at.member("screws"), posts, postNames).read(lift.getScrews());
        LiftRequest.Order order = order();
        Optional<LiftRequest.Crept> crept = crept();
        LiftRequest.Progress progress = progress(points);
        List<Integer> onto = limits.bearings(lift.getOnto(), at.member("onto"));
        return at.findings().list().size() > before
                ? Optional.empty()
                : Optional.of(new LiftDraft(
                        at,
                        during,
                        tolerance,
                        points,
                        target.orElseThrow(),
                        read.orElseThrow(),
                        screws,
                        order,
                        crept.orElseThrow(),
                        progress,
                        onto,
                        jacks));
    }

    /** The jacks, which go with one method and not with the other. */
    private List<LiftJacksReader.Draft> jacks() {
        Text method = at.text("method", lift.getMethod());
        String chosen = method.choice(List.of(UNDER_LOAD, BY_JACK)).orElse("");
        List<LiftJack> jacks = lift.getJacks();
        if (chosen.equals(BY_JACK) && jacks == null) {
            method.spot().report(Messages.LIFT_BY_JACK, method.value());
        } else if (chosen.equals(UNDER_LOAD) && jacks != null) {
            at.member("jacks").report(Messages.JACKS_FOREIGN, "");
        }
        return jacks == null
                ? List.of()
                : new LiftJacksReader(at.member("jacks"), posts, postNames, stands).read(jacks);
    }

    private List<LiftDraft.LiftPointDraft> points() {
        NameTable<Integer> names = new NameTable<>("point");
        List<LiftDraft.LiftPointDraft> read = new ArrayList<>();
        for (int i = 0; i < lift.getLevels().size(); i++) {
            LiftPoint point = lift.getLevels().get(i);
            Spot spot = at.member("levels").element(i);
            names.add(point.getName(), i, spot.member("name"));
            read.add(point(point, spot));
        }
        return read;
    }

    private LiftDraft.LiftPointDraft point(LiftPoint point, Spot spot) {
        Text along = spot.text("along", point.getAlong());
        Text across = spot.text("across", point.getAcross());
        String name = Fault.shown(point.getName());
        int over = -1;
        String post = point.getPost();
        if (post != null) {
            over = posts.find(post, spot.member("post")).orElse(-1);
            if (along.given() || across.given()) {
                spot.report(Messages.POINT_TWO_WAYS, "", name);
            }
        } else if (!along.given() || !across.given()) {
            spot.report(Messages.POINT_UNPLACED, "", name);
        }
        return new LiftDraft.LiftPointDraft(
                point.getName(),
                over,
                along.quantityOr(Range.POSITION, 0),
                across.quantityOr(Range.POSITION, 0),
                spot.text("level", point.getLevel()).quantity(Range.LEVEL),
                spot.text("target", point.getTarget()).quantityOr(Range.LEVEL, Double.NaN));
    }

    private Optional<LiftRequest.Target> target(LiftTarget target) {
        Spot spot = at.member("target");
        Text level = spot.text("level", target.getLevel());
        double along = target.getAlong() == null ? 0 : target.getAlong();
        double across = target.getAcross() == null ? 0 : target.getAcross();
        if (!level.given() && (target.getAlong() != null || target.getAcross() != null)) {
            spot.report(Messages.TARGET_WITHOUT_LEVEL, "");
        }
        LiftRequest.Plane plane = level.given()
                ? new LiftRequest.Plane(level.quantity(Range.LEVEL), along, across)
                : LiftRequest.Plane.NONE;
        return Optional.of(new LiftRequest.Target(plane, Boolean.TRUE.equals(target.getAsFarAsLimitsAllow())));
    }

    private LiftRequest.Order order() {
        Text order = at.text("order", lift.getOrder());
        List<String> words = List.of("most to go", "middle outward", "ends inward");
        return order.given()
                ? order.choice(words)
                        .map(w -> LiftRequest.Order.values()[words.indexOf(w)])
                        .orElse(LiftRequest.Order.MOST_TO_GO_FIRST)
                : LiftRequest.Order.MOST_TO_GO_FIRST;
    }

    private Optional<LiftRequest.Crept> crept() {
        double least = or(lift.getCreptLeast(), 0);
        double most = or(lift.getCreptMost(), 1);
        if (most < least) {
            at.member(lift.getCreptMost() == null ? "creptLeast" : "creptMost")
                    .report(Messages.CREPT_TURNED, Double.toString(most));
            return Optional.empty();
        }
        return Optional.of(new LiftRequest.Crept(least, most));
    }

    private static double or(@Nullable Double value, double absent) {
        return value == null ? absent : value;
    }

    private LiftRequest.Progress progress(List<LiftDraft.LiftPointDraft> points) {
        List<LiftTurned> turned = lift.getTurned();
        List<LiftReading> readings = lift.getReadings();
        if (readings == null) {
            if (turned != null) {
                at.member("turned").report(Messages.TURNED_WITHOUT_READINGS, "");
            }
            return LiftRequest.Progress.NONE;
        }
        return new LiftRequest.Progress(turned(turned == null ? List.of() : turned), readings(readings, points));
    }

    private List<Double> turned(List<LiftTurned> turned) {
        Double[] raises = new Double[postNames.size()];
        Arrays.fill(raises, Double.NaN);
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < turned.size(); i++) {
            Spot spot = at.member("turned").element(i);
            String name = turned.get(i).getPost();
            double raise = spot.text("raise", turned.get(i).getRaise()).quantity(Range.TRAVEL);
            posts.find(name, spot.member("post")).ifPresent(post -> {
                if (!seen.add(post)) {
                    spot.member("post").report(Messages.TURNED_TWICE, name, Fault.shown(name));
                }
                raises[post] = raise;
            });
        }
        for (int p = 0; p < raises.length; p++) {
            if (!seen.contains(p)) {
                String name = postNames.get(p);
                at.member("turned").report(Messages.TURNED_MISSING, name, Fault.shown(name));
            }
        }
        return Arrays.asList(raises);
    }

    private List<Double> readings(List<LiftReading> readings, List<LiftDraft.LiftPointDraft> points) {
        NameTable<Integer> names = NameTable.indexed(
                "point", points.stream().map(LiftDraft.LiftPointDraft::name).toList());
        List<Double> levels = new ArrayList<>(Collections.nCopies(points.size(), Double.NaN));
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < readings.size(); i++) {
            Spot spot = at.member("readings").element(i);
            String name = readings.get(i).getPoint();
            double level = spot.text("level", readings.get(i).getLevel()).quantity(Range.LEVEL);
            names.find(name, spot.member("point")).ifPresent(point -> {
                if (!seen.add(point)) {
                    spot.member("point").report(Messages.READING_TWICE, name, Fault.shown(name));
                }
                levels.set(point, level);
            });
        }
        return levels;
    }
}
