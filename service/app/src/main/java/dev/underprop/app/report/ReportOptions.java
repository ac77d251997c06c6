package dev.underprop.app.report;

import dev.underprop.wire.record.Extent;

/**
 * What reports have in common.
 *
 * @param extent how much a record tells
 * @param text how much text says of each plan
 * @param most how many findings SARIF lists; the rest is counted
 */
public record ReportOptions(Extent extent, TextReport.Level text, int most) {}
