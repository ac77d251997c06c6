package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.record.Outcome;

/**
 * JUnit's XML: a suite a plan, a case a check. What fails, and in an incomplete plan what was not made, is a failure; a plan that was
 * not judged is an error; what does not apply, was accepted, or was not made in a plan that is worse than incomplete, is skipped.
 */
final class JunitReport implements Report {
    private static final String HEAD =
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"underprop check\"";

    /** Room on the first line for totals of any size, which are known at the end only. */
    private static final int ROOM =
            totals(new long[] {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE}).length();

    private final Sink sink;
    /** Tests, failures, errors. */
    private final long[] sums = new long[3];

    JunitReport(Sink sink) {
        this.sink = sink;
        sink.write(HEAD + (sink.inFile() ? " ".repeat(ROOM) : "") + ">\n");
    }

    private static String totals(long[] sums) {
        return " tests=\"" + sums[0] + "\" failures=\"" + sums[1] + "\" errors=\"" + sums[2] + "\"";
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        Suite suite = new Suite(judgement.outcome());
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            PlanCheck result = judged.result();
            if (result.getVerdict() == PlanVerdict.UNSTABLE) {
                suite.failure("stability", "UNSTABLE", result.getHeadline());
            }
            result.getChecks().forEach(check -> suite.add(check, judgement.accepts(check), result.getVerdict()));
        } else if (judgement.outcome() instanceof Outcome.Refused refused) {
            suite.error(refused);
        }
        String text = suite.text();
        return () -> {
            sums[0] += suite.tests;
            sums[1] += suite.failures;
            sums[2] += suite.errors;
            sink.write(text);
        };
    }

    @Override
    public void complete(End end) {
        sink.write("</testsuites>\n");
        if (sink.inFile()) {
            sink.overwrite(HEAD.length(), totals(sums));
        }
        if (end.complete()) {
            sink.complete();
        }
    }

    @Override
    public void close() {
        sink.close();
    }

    /** The suite of one plan. */
    private static final class Suite {
        private final Outcome outcome;
        private final StringBuilder cases = new StringBuilder();
        private int tests;
        private int failures;
        private int errors;
        private int skipped;

        Suite(Outcome outcome) {
            this.outcome = outcome;
        }

        void add(CheckResult check, boolean accepted, PlanVerdict verdict) {
            String name = check.getCheck() + " (" + check.getPlace() + ")";
            String message = check.getMessage();
            switch (check.getVerdict()) {
                case PASS -> test(name, "");
                case FAIL -> {
                    if (accepted) {
                        skip(name, "Accepted: " + message);
                    } else {
                        failure(name, "FAIL", message);
                    }
                }
                case NOT_CHECKED -> {
                    if (verdict == PlanVerdict.INCOMPLETE && !accepted) {
                        failure(name, "NOT_CHECKED", message);
                    } else {
                        skip(name, (accepted ? "Accepted, not checked: " : "Not checked: ") + message);
                    }
                }
                default -> skip(name, message);
            }
        }

        void failure(String name, String type, String message) {
            failures++;
            test(name, told("failure", type, message, message));
        }

        void error(Outcome.Refused refused) {
            errors++;
            StringBuilder all = new StringBuilder();
            for (ProblemError error : refused.problem().getErrors()) {
                all.append(ProblemText.fault(refused.name().key(), error));
            }
            String detail = refused.problem().getDetail();
            String message = detail == null ? refused.problem().getTitle() : detail;
            String kind = refused.problem().getType().replace("/problems/", "");
            test("plan", told("error", kind, message, all.toString()));
        }

        private void skip(String name, String message) {
            skipped++;
            test(name, "<skipped message=\"" + Markup.attribute(message) + "\"/>");
        }

        private void test(String name, String inside) {
            tests++;
            cases.append("    <testcase classname=\"")
                    .append(Markup.attribute(outcome.key()))
                    .append("\" name=\"")
                    .append(Markup.attribute(name))
                    .append(inside.isEmpty() ? "\"/>\n" : "\">" + inside + "</testcase>\n");
        }

        private static String told(String element, String type, String message, String text) {
            return "<" + element + " type=\"" + Markup.attribute(type) + "\" message=\"" + Markup.attribute(message)
                    + "\">" + Markup.text(text) + "</" + element + ">";
        }

        String text() {
            return "  <testsuite name=\"" + Markup.attribute(outcome.key()) + "\" tests=\"" + tests + "\" failures=\""
                    + failures + "\" errors=\"" + errors + "\" skipped=\"" + skipped + "\" file=\""
                    + Markup.attribute(outcome.name().key()) + "\">\n" + cases + "  </testsuite>\n";
        }
    }
}
