package dev.underprop.engine.lift;

import dev.underprop.engine.assess.ContactPlace;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads every limit of a lift off a shape. Values and limits go by one index. */
final class Gauges {

    /** An opening that counts as none (m): below any feeler gauge, above rounding. */
    static final double CLOSED = 1e-5;

    /** A pull that counts as none (N). */
    private static final double NO_PULL = 1;

    private final LiftFloor floor;
    private final LiftRequest request;
    private final Situation during;
    private final double[] sunk;
    private final List<Limit> limits = new ArrayList<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final List<Integer> stays = new ArrayList<>();
    private final List<Integer> ties = new ArrayList<>();
    private final Slopes slopes;
    private final Members members;
    private final boolean[] free;

    /** @param sunk how far what each post stands on has come down: its screw stands out so much further (m) */
    Gauges(LiftFloor floor, LiftRequest request, Situation during, double[] sunk) {
        this.floor = floor;
        this.request = request;
        this.during = during;
        this.sunk = sunk.clone();
        LiftLimits.Ratios ratios = request.limits().ratios();
        StudiedFloor study = floor.study();
        this.free = new boolean[floor.heads().size()];
        for (LiftFloor.Head head : floor.heads()) {
            limits.add(new Limit(Limit.Kind.POST, study.name(head.contact()), ratios.post()));
        }
        for (LiftFloor.Head head : floor.heads()) {
            limits.add(new Limit(Limit.Kind.PAD, study.name(head.contact()), ratios.pad()));
        }
        for (int p = 0; p < free.length; p++) {
            LiftFloor.Head head = floor.heads().get(p);
            free[p] = !study.post(head.place()).ends().fastened();
            limits.add(new Limit(Limit.Kind.SLACK, study.name(head.contact()), slack(p)));
        }
        this.members = new Members(study, during);
        members.limits(ratios, limits);
        addContacts(study);
        this.slopes = new Slopes(floor, request.limits().slope());
        slopes.limits(limits);
        open.addAll(members.open());
    }

    /** A raised post that is not fastened may stand clear by no more than its own smallest turn closes: common practice. */
    private double slack(int post) {
        return request.screws().get(post).step();
    }

    private void addContacts(StudiedFloor study) {
        for (int c = 0; c < study.places().size(); c++) {
            if (!study.taken(c, during) && stays(study, study.places().get(c))) {
                stays.add(c);
                limits.add(new Limit(Limit.Kind.CONTACT, study.name(c), CLOSED));
            }
        }
        for (int c = 0; c < study.places().size(); c++) {
            Fastening fastening = fastening(study, study.places().get(c));
            if (!study.taken(c, during) && !(fastening instanceof Fastening.Loose)) {
                ties.add(c);
                double held = fastening instanceof Fastening.Held by ? by.uplift() : NO_PULL;
                limits.add(new Limit(Limit.Kind.TIE, study.name(c), held));
            }
        }
    }

    private boolean stays(StudiedFloor study, ContactPlace place) {
        if (place instanceof ContactPlace.OnBearing seat) {
            Bearing bearing = study.plan().floor().bearings().get(seat.bearing());
            return !request.limits().mayLeave().contains(seat.bearing()) && !(bearing.gapUnder(seat.joist()) > 0);
        }
        return place instanceof ContactPlace.OnPier head
                && !request.limits().mayLeave().contains(head.bearing());
    }

    private static Fastening fastening(StudiedFloor study, ContactPlace place) {
        if (place instanceof ContactPlace.OnBearing seat) {
            return study.plan().floor().bearings().get(seat.bearing()).fastening();
        }
        return place instanceof ContactPlace.OnPier head
                ? ((Girder) study.plan().floor().bearings().get(head.bearing()).body())
                        .piers()
                        .get(head.pier())
                        .fastening()
                : new Fastening.Loose();
    }

    List<Limit> limits() {
        return limits;
    }

    /** What could not be checked and why, in words. */
    Set<String> open() {
        return open;
    }

    /**
     * Every value, in the order of {@link #limits}; NaN where it could not be checked.
     *
     * @param down whether the posts are being let down, so that they may go slack
     */
    double[] read(Shape shape, double[] raised, boolean down) {
        double[] values = new double[limits.size()];
        int posts = floor.heads().size();
        for (int p = 0; p < posts; p++) {
            LiftFloor.Head head = floor.heads().get(p);
            double load = shape.greatest(head.contact());
            values[p] = ratio(floor.study().post(head.place(), Math.max(0, raised[p] + sunk[p]), load));
            values[posts + p] = ratio(floor.study().pad(head.place(), load));
            values[2 * posts + p] = down || !free[p] || raised[p] <= 0 ? 0 : opening(shape, head.contact());
        }
        int n = members.read(shape, values, 3 * posts);
        for (int c : stays) {
            values[n++] = opening(shape, c);
        }
        for (int c : ties) {
            values[n++] = pull(shape, c);
        }
        slopes.read(shape, values, n);
        return values;
    }

    private static double opening(Shape shape, int contact) {
        double widest = 0;
        for (int b = 0; b < shape.bounds(); b++) {
            widest = Math.max(widest, shape.dead(b).opening(contact));
        }
        return widest;
    }

    private static double pull(Shape shape, int contact) {
        double pull = 0;
        for (int b = 0; b < shape.bounds(); b++) {
            for (int i = 0; i < shape.cases(); i++) {
                pull = Math.max(pull, -shape.of(b, i).force(contact));
            }
        }
        return pull;
    }

    private double ratio(Finding finding) {
        if (finding instanceof CheckResult.Judged judged) {
            return judged.demand() == 0 ? 0 : judged.demand() / judged.capacity();
        }
        if (finding instanceof CheckResult.NotChecked unknown) {
            open.add(unknown.reason());
            return Double.NaN;
        }
        return finding instanceof CheckResult.Refused ? Double.POSITIVE_INFINITY : 0;
    }
}
