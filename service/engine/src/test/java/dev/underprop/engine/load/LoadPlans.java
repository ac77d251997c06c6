package dev.underprop.engine.load;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Basis;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.List;

/** Plans as far as the way of the loads looks at them; members weigh nothing. */
final class LoadPlans {

    static final double ANY = Double.POSITIVE_INFINITY;

    private static final WoodGrade GRADE = new WoodGrade(
            "species",
            "grade",
            6e6,
            4e6,
            1e6,
            3e6,
            9e6,
            9e9,
            3e9,
            0.43,
            WoodGrade.Sizes.WESTERN_DIMENSION,
            Citation.remembered("test", "", "invented"));

    private static final Member MEMBER =
            new Member("2x10", new RectangularSection(0.038, 0.235), 1, GRADE, true, Member.Moisture.DRY, 0);

    private LoadPlans() {}

    static Joist joist(double x, double start, double end) {
        return new Joist("J" + x + "/" + start, x, start, end - start, MEMBER);
    }

    static Shore shore(String name, double y, double start, double end, double... posts) {
        List<Post> list = new ArrayList<>();
        for (double x : posts) {
            list.add(new Post(
                    name + (list.size() + 1),
                    x,
                    2,
                    Post.Stiffness.exactly(ANY),
                    0,
                    0,
                    new Post.NoType(),
                    new Post.NoPad()));
        }
        return new Shore(name, y, MEMBER, start, end - start, List.of(), list);
    }

    static Bearing bearing(String name, double y) {
        return new Bearing(name, y, 0.09, ANY, -ANY, ANY, new Fastening.Loose(), List.of());
    }

    static JobPlan plan(List<Joist> joists, List<Bearing> bearings, List<Shore> shores, List<Load> loads) {
        return new JobPlan(
                Basis.US_ASD,
                new Floor(joists, bearings, loads, Floor.JoistWeight.INCLUDED_IN_DEAD),
                shores,
                new Ground.Unstated(),
                List.of(new Situation("shored", List.of(), List.of())));
    }

    static Intensity dead(double value) {
        return new Intensity(value, 0, 0, 0);
    }

    static Intensity live(double value) {
        return new Intensity(0, value, 0, 0);
    }

    /** Dead load on one member (N). */
    static double deadOn(JobPlan plan, int member) {
        LoadModel model = LoadModel.of(plan);
        return model.units().get(model.dead()).pieces().stream()
                .filter(p -> p.member() == member)
                .mapToDouble(UnitLoad.Piece::total)
                .sum();
    }

    static double total(LoadModel model, int unit) {
        return unit == LoadModel.ABSENT
                ? 0
                : model.units().get(unit).pieces().stream()
                        .mapToDouble(UnitLoad.Piece::total)
                        .sum();
    }

    static double live(LoadModel model) {
        return model.cells().stream().mapToDouble(c -> total(model, c.unit())).sum();
    }
}
