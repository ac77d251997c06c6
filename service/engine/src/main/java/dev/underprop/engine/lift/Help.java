package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Says what stopped a lift, and goes the way again with changes to see which would let it through. */
final class Help {

    /** Limits set aside one after the other before it is said that no single change helps. */
    private static final int MOST = 4;

    private final Planning planning;
    private final LiftFloor floor;
    private final Gauges gauges;
    private final Levels levels;
    private final Begun begun;

    Help(Planning planning, LiftFloor floor, Gauges gauges, Levels levels, Begun begun) {
        this.planning = planning;
        this.floor = floor;
        this.gauges = gauges;
        this.levels = levels;
        this.begun = begun;
    }

    LiftPlan.Stopped stopped(Run run, Steps steps) {
        Stager.Refusal refusal = run.refusal();
        String post = planning.wanted().posts().get(refusal.post()).name();
        double raised = run.course().raised()[refusal.post()];
        int stage = run.made().size() + 1;
        if (refusal.limit() < 0) {
            Limit none = new Limit(Limit.Kind.CONTACT, post, 0);
            String moves = refusal.after().shape().stands()
                    ? "the order of turns leaves no way on"
                    : refusal.after().shape().moves();
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
            int[] fine = steps.possible();
            for (int p = 0; p < fine.length; p++) {
                fine[p] *= factor;
            }
            Run run = new Run(floor, gauges, request, levels, begun, new BitSet());
            run.go(fine);
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

    private List<LiftPlan.Help> aside(Steps steps, int first) {
        BitSet aside = new BitSet();
        aside.set(first);
        for (int i = 0; i < MOST; i++) {
            Run run = new Run(floor, gauges, planning.request(), levels, begun, aside);
            run.go(steps.possible());
            if (!run.stopped()) {
                List<LiftPlan.Help> help = new ArrayList<>();
                for (int l = aside.nextSetBit(0); l >= 0; l = aside.nextSetBit(l + 1)) {
                    Limit limit = gauges.limits().get(l);
                    help.add(new LiftPlan.Help(
                            words(limit)
                                    + (aside.cardinality() > 1 ? ", together with the other changes named here" : ""),
                            limit,
                            run.verdicts().greatest(l)));
                }
                return help;
            }
            int next = run.refusal().limit();
            if (next < 0) {
                return List.of();
            }
            aside.set(next);
        }
        return List.of();
    }

    private static String words(Limit limit) {
        return switch (limit.kind()) {
            case POST -> "put a stronger post at " + limit.place() + ", or one more beside it";
            case PAD -> "put a larger pad under " + limit.place();
            case BEAM -> "make " + limit.place() + " stronger, or set one more post";
            case JOIST -> "double joist " + limit.place() + ", or move the shore";
            case CONTACT ->
                "allow the floor to come clear of " + limit.place()
                        + " (declare: mayLeave) where its engineer agrees, fasten it there, or set a lower target";
            case TIE -> "make the fastening of " + limit.place() + " stronger, or undo it";
            case SLACK -> "fasten post " + limit.place() + " at head and foot, or set its target higher";
            case SLOPE -> "allow a greater change of slope from " + limit.place() + ", or set lower targets there";
            case TRAVEL, TOTAL -> "allow more at " + limit.place();
        };
    }
}
