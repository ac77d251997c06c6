package dev.underprop.engine.assess;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.Setting.Fit;
import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.statics.ContactSolver;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What all situations of a plan share: frame, loads, a solver for each stiffness of the posts, and the floor as found. */
final class Structure {

    private final JobPlan plan;
    private final LoadModel model;
    private final PlanFrame frame;
    private final PostBounds bounds;
    private final Map<Give, ContactSolver> solvers = new EnumMap<>(Give.class);
    private final Map<Give, AsFound> found = new EnumMap<>(Give.class);
    private final List<Fit> fits = new ArrayList<>();

    Structure(JobPlan plan) {
        this(plan, Halt.NEVER);
    }

    Structure(JobPlan plan, Halt halt) {
        this.plan = plan;
        this.model = LoadModel.of(plan);
        this.frame = PlanFrame.of(plan);
        this.bounds = PostBounds.of(frame);
        ContactSolver rigid = new ContactSolver(frame.frame(), model.units(), halt);
        bounds.stiffness().forEach((give, k) -> solvers.put(give, give == Give.RIGID ? rigid : rigid.withProps(k)));
        solvers.forEach((give, solver) -> found.put(give, AsFound.of(frame, model, solver)));
        addFits(rigid);
    }

    private void addFits(ContactSolver solver) {
        double tolerance = plan.circumstances().limits().fitUp().tolerance();
        fits.add(Fit.TRUE);
        for (int c = 0; tolerance > 0 && c < frame.contacts(); c++) {
            if (frame.places().get(c) instanceof ContactPlace.OnPost head) {
                Post post = plan.shores().get(head.shore()).posts().get(head.post());
                int unit = solver.addOffsets(List.of(new UnitLoad.Offset(c, tolerance)));
                fits.add(new Fit(post.name() + " low", unit, 1));
                fits.add(new Fit(post.name() + " high", unit, -1));
            }
        }
    }

    JobPlan plan() {
        return plan;
    }

    LoadModel model() {
        return model;
    }

    PlanFrame frame() {
        return frame;
    }

    PostBounds bounds() {
        return bounds;
    }

    List<Give> gives() {
        return List.copyOf(solvers.keySet());
    }

    ContactSolver solver(Give give) {
        ContactSolver solver = solvers.get(give);
        if (solver == null) {
            throw new IllegalStateException("no solver for this stiffness");
        }
        return solver;
    }

    AsFound found(Give give) {
        AsFound one = found.get(give);
        if (one == null) {
            throw new IllegalStateException("no solver for this stiffness");
        }
        return one;
    }

    /** Posts in line first, then one at a time out of line. */
    List<Fit> fits() {
        return fits;
    }

    int factorised() {
        return solvers.values().stream().mapToInt(ContactSolver::factorised).sum();
    }
}
