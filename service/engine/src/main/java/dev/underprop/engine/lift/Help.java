package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Says what stopped a lift, and goes the way again with changes to see which would let it through. */
final class Help {

    /** Kinds of limits set aside one after the other before it is said that no single change helps. */
    private static final int MOST = 4;

    private final Planning planning;
    private final Run.Start start;
    private final LiftFloor floor;
    private final Gauges gauges;
    private final Levels levels;

    Help(Planning planning, Run.Start start, Levels levels) {
        this.planning = planning;
        this.start = start;
        this.floor = start.floor();
        this.gauges = start.gauges();
        this.levels = levels;
    }

    LiftPlan.Stopped stopped(Run run, Steps steps) {
        Stager.Refusal refusal = run.refusal();
        String post = planning.wanted().posts().get(refusal.post()).name();
        double raised = run.course().raised()[refusal.post()];
        int stage = run.attempted();
        if (refusal.limit() < 0) {
            Limit none = new Limit(Limit.Kind.CONTACT, post, 0);
            String moves = refusal.after().stands()
                    ? "the order of turns leaves no way on"
                    : refusal.after().words();
            return new LiftPlan.Stopped(stage, post, raised, none, Double.NaN, moves, finer(steps));
        }
        Limit limit = gauges.limits().get(refusal.limit());
        double value = refusal.after().values()[refusal.limit()];
        List<LiftPlan.Help> help = new ArrayList<>(finer(steps));
        help.addAll(aside(steps, refusal.limit()));
        return new LiftPlan.Stopped(stage, post, raised, limit, value, "", help);
    }

    /** A screw that can be set more finely. */
    private List<LiftPlan.Help> finer(Steps steps) {
        for (int by = 2; by <= 4; by *= 2) {
            int factor = by;
            LiftRequest request = planning.request()
                    .with(planning.request().screws().stream()
                            .map(s -> s.finer(factor))
                            .toList());
            int[] fine = times(steps.possible(), factor);
            Run run = new Run(planning.start(request, start), request, levels, new BitSet());
            run.go(times(steps.catchUp(), factor), fine);
            if (!run.stopped()) {
                return List.of(new LiftPlan.Help(
                        "turn the screws by " + (factor == 2 ? "half" : "a quarter")
                                + " of the smallest turn stated: then every turn keeps every limit",
                        new Limit(Limit.Kind.TOTAL, "smallest turn", 0),
                        Double.NaN));
            }
        }
        return List.of();
    }

    private static int[] times(int[] steps, int factor) {
        return java.util.Arrays.stream(steps).map(s -> s * factor).toArray();
    }

    /** Sets aside the limits of one kind after the other until the way is free, and says what each would have to allow. */
    private List<LiftPlan.Help> aside(Steps steps, int first) {
        Set<Limit.Kind> kinds = EnumSet.of(gauges.limits().get(first).kind());
        for (int i = 0; i < MOST; i++) {
            Run run = new Run(start, planning.request(), levels, of(kinds));
            run.go(steps.catchUp(), steps.possible());
            if (!run.stopped()) {
                return kinds.stream()
                        .map(kind -> worst(kind, run, kinds.size() > 1))
                        .toList();
            }
            if (floor.spent()) {
                return List.of();
            }
            int next = run.refusal().limit();
            if (next < 0) {
                return List.of();
            }
            kinds.add(gauges.limits().get(next).kind());
        }
        return List.of();
    }

    private BitSet of(Set<Limit.Kind> kinds) {
        BitSet aside = new BitSet();
        for (int l = 0; l < gauges.limits().size(); l++) {
            aside.set(l, kinds.contains(gauges.limits().get(l).kind()));
        }
        return aside;
    }

    private LiftPlan.Help worst(Limit.Kind kind, Run run, boolean together) {
        int worst = -1;
        for (int l = 0; l < gauges.limits().size(); l++) {
            if (gauges.limits().get(l).kind() == kind && (worst < 0 || Verdicts.more(used(run, l), used(run, worst)))) {
                worst = l;
            }
        }
        Limit limit = gauges.limits().get(worst);
        String words = words(limit) + (together ? ", together with the other changes named here" : "");
        return new LiftPlan.Help(words, limit, run.verdicts().greatest(worst));
    }

    private double used(Run run, int limit) {
        return gauges.limits().get(limit).used(run.verdicts().greatest(limit));
    }

    private static String words(Limit limit) {
        return switch (limit.kind()) {
            case POST -> "put stronger posts, first at " + limit.place() + ", or more of them";
            case PAD -> "put larger pads, first under " + limit.place();
            case BEAM -> "make " + limit.place() + " stronger, or set one more post";
            case JOIST -> "double the joists that bend too far, first " + limit.place() + ", or move the shore";
            case CONTACT ->
                "allow the floor to come clear of its bearing at " + limit.place()
                        + " and wherever it does (declare: mayLeave) where its engineer agrees, fasten it there, or set a lower target";
            case TIE -> "make the fastening of " + limit.place() + " stronger, or undo it";
            case SLACK -> "fasten the posts at head and foot, first " + limit.place() + ", or set its target higher";
            case SLOPE ->
                "allow a greater change of slope, the greatest from " + limit.place() + ", or set lower targets there";
            case TRAVEL, TOTAL -> "allow more at " + limit.place();
        };
    }
}
