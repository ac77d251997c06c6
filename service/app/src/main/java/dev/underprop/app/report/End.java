package dev.underprop.app.report;

import java.util.List;

/**
 * How a run ended.
 *
 * @param tally what was counted
 * @param complete whether every plan was reached; otherwise the run was stopped
 * @param remarks what is worth saying besides, such as accepted findings that are no more
 */
public record End(Tally tally, boolean complete, List<String> remarks) {
    public End {
        remarks = List.copyOf(remarks);
    }
}
