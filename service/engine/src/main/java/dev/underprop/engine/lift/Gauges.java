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

    /** A screw that is this much below where it was snug is below it (m): above rounding. */
    private static final double BELOW = 1e-9;

    /** A pull that counts as none (N). */
    private static final double NO_PULL = 1;

    private final LiftFloor floor;
    private final LiftRequest request;
    private final Situation during;
    private final boolean[] carried;
    private final List<Limit> limits = new ArrayList<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final List<Integer> stays = new ArrayList<>();
    private final List<Integer> ties = new ArrayList<>();
    private final Slopes slopes;
    private final Members members;
    private final boolean[] free;

    /** @param carried by post, whether it carries anything when the turns begin, so that it is watched before it is raised */
    Gauges(LiftFloor floor, LiftRequest request, Situation during, boolean[] carried) {
        this.floor = floor;
        this.request = request;
        this.during = during;
        this.carried = carried.clone();
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
        for (int p = 0; p < free.length; p++) {
            String name = study.name(floor.heads().get(p).contact());
            limits.add(
                    new Limit(Limit.Kind.TRAVEL, name, request.screws().get(p).travel()));
            limits.add(new Limit(
                    Limit.Kind.TRAVEL,
                    name + ", downwards",
                    request.screws().get(p).down()));
        }
        for (LiftFloor.Jack jack : floor.jacks()) {
            String name = study.name(jack.contact());
            limits.add(new Limit(Limit.Kind.POST, name, ratios.post()));
            limits.add(new Limit(Limit.Kind.PAD, name, ratios.pad()));
            limits.add(new Limit(Limit.Kind.TRAVEL, name + ", stroke of the jack", jack.stroke()));
        }
        this.members = new Members(floor, during);
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

    boolean[] carried() {
        return carried.clone();
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
        double[] values = strengths(shape, raised, down);
        travel(raised, values);
        slopes.read(shape, values, values.length - slopes.count());
        return values;
    }

    /** The same without what dead load alone decides: 0 there. */
    double[] strengths(Shape shape, double[] raised, boolean down) {
        double[] values = contacts(shape, raised, down);
        members.read(shape, values, ofPosts());
        return values;
    }

    /** The same for posts, pads, contacts and fastenings alone. */
    double[] contacts(Shape shape, double[] raised, boolean down) {
        double[] values = new double[limits.size()];
        int posts = floor.heads().size();
        for (int p = 0; p < posts; p++) {
            LiftFloor.Head head = floor.heads().get(p);
            double load = shape.greatest(head.contact());
            values[p] = ratio(floor.study().post(head.place(), Math.max(0, raised[p]), load));
            values[posts + p] = ratio(floor.study().pad(head.place(), load));
            values[2 * posts + p] = down || !watched(p, raised) ? 0 : slack(shape, p);
        }
        int n = ofPosts() + members.count();
        for (int c : stays) {
            values[n++] = opening(shape, c);
        }
        pulls(shape, values);
        return values;
    }

    /** The same for fastenings alone. */
    double[] pulls(Shape shape) {
        double[] values = new double[limits.size()];
        pulls(shape, values);
        return values;
    }

    private void pulls(Shape shape, double[] values) {
        int n = ofPosts() + members.count() + stays.size();
        for (int c : ties) {
            values[n++] = pull(shape, c);
        }
    }

    /** Values of posts: strength, pad, slack, travel either way; of jacks: strength, pad, stroke. */
    private int ofPosts() {
        return ofJacks() + 3 * floor.jacks().size();
    }

    private int ofJacks() {
        return 5 * floor.heads().size();
    }

    /** Raise by the smallest turn of a post's screw (m). */
    double step(int post) {
        return request.screws().get(post).step();
    }

    /**
     * Every value while a jack holds the floor.
     *
     * @param down whether the posts are being let down
     */
    double[] read(Jacked jacked, boolean down) {
        double[] values = contacts(jacked, down);
        members.read(jacked, values, ofPosts());
        slopes.read(jacked.shape(), values, values.length - slopes.count());
        return values;
    }

    /** The same for jack, posts, pads, contacts and fastenings alone. The freed post carries nothing, and is meant to be clear. */
    double[] contacts(Jacked jacked, boolean down) {
        double[] values = contacts(jacked.shape(), jacked.raised(), down);
        LiftFloor.Jack jack = jacked.jack();
        values[2 * floor.heads().size() + jack.post()] = 0;
        int n = ofJacks() + 3 * jack.index();
        double load = jacked.shape().greatest(jack.contact());
        values[n] = ratio(floor.study().post(jack.place(), jacked.tallest(), load));
        values[n + 1] = ratio(floor.study().pad(jack.place(), load));
        values[n + 2] = jacked.furthest();
        return values;
    }

    /** A post that is not fastened is watched from where it carries or was raised. */
    private boolean watched(int p, double[] raised) {
        return free[p] && (raised[p] > 0 || carried[p]);
    }

    private void travel(double[] raised, double[] values) {
        int posts = floor.heads().size();
        for (int p = 0; p < posts; p++) {
            LiftScrew screw = request.screws().get(p);
            double turned =
                    raised[p] + floor.study().post(floor.heads().get(p).place()).gap();
            values[3 * posts + 2 * p] = Double.isNaN(screw.travel()) ? Double.NaN : Math.max(0, turned);
            boolean below = turned < -BELOW;
            values[3 * posts + 2 * p + 1] = !below ? 0 : Double.isNaN(screw.down()) ? Double.NaN : -turned;
            if (below && Double.isNaN(screw.down())) {
                open.add("screw travel: how far the screw of "
                        + floor.study().name(floor.heads().get(p).contact())
                        + " can go down from where it is snug is not stated (declare: travelDown)");
            }
        }
    }

    /** Where a post is taken to stand lower than its screw would have it, it is slack already. */
    private double slack(Shape shape, int p) {
        double widest = 0;
        for (int b = 0; b < shape.bounds(); b++) {
            boolean doubted = floor.bounds().get(b).doubt().lower(p) > 0;
            widest = Math.max(
                    widest, doubted ? 0 : opening(shape, b, floor.heads().get(p).contact()));
        }
        return widest;
    }

    private static double opening(Shape shape, int contact) {
        double widest = 0;
        for (int b = 0; b < shape.bounds(); b++) {
            widest = Math.max(widest, opening(shape, b, contact));
        }
        return widest;
    }

    private static double opening(Shape shape, int bound, int contact) {
        double widest = 0;
        for (int i = 0; i < shape.cases(); i++) {
            widest = Math.max(widest, shape.of(bound, i).opening(contact));
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
