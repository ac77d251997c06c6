package dev.underprop.app.report;

import dev.underprop.wire.record.Outcome;

/** A report of one page about many plans: it keeps the worst plans and the first that were not judged, and is written at the end. */
abstract class Overview implements Report {
    /** What every such page says of itself. */
    static final String AID = "A calculation aid. The local building code and a licensed engineer decide.";

    /** What a page says of a run that did not end. */
    static final String STOPPED = "The run was stopped: not every plan was reached.";

    private final Sink sink;
    private final Worst worst;
    private final RefusedList refused;

    /**
     * A page.
     *
     * @param sink where it goes
     * @param most how many plans it lists
     */
    Overview(Sink sink, int most) {
        this.sink = sink;
        this.worst = new Worst(most);
        this.refused = new RefusedList(most);
    }

    @Override
    public final Runnable prepare(Judgement judgement) {
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            Worst.Row row = Worst.row(judgement, judged);
            return () -> worst.add(row);
        }
        RefusedList.Row row = RefusedList.row((Outcome.Refused) judgement.outcome());
        return () -> refused.add(row);
    }

    @Override
    public final void complete(End end) {
        sink.write(page(end, worst, refused));
        if (end.complete()) {
            sink.complete();
        }
    }

    /** The whole page. */
    abstract String page(End end, Worst worst, RefusedList refused);

    @Override
    public final void close() {
        sink.close();
    }
}
