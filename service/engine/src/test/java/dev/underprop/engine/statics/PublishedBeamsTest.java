package dev.underprop.engine.statics;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import dev.underprop.fixtures.Inputs;
import dev.underprop.fixtures.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Published and closed-form beams through the contact solver: a carrier on props that can also pull. */
class PublishedBeamsTest {

    @TestFactory
    Stream<DynamicTest> everyPublishedBeamIsReproduced() {
        return Fixtures.ofKind("continuous-beam").stream()
                .flatMap(c -> c.expected().stream().map(e -> DynamicTest.dynamicTest(c + " " + e, () -> check(c, e))));
    }

    private static void check(Case published, Expected expected) {
        double actual = new Solved(published.inputs()).value(expected);
        Verdict printed = expected.check(actual);
        assertThat(printed.agrees()).as(printed.toString()).isTrue();
        if (expected.computed().isPresent()) {
            Verdict computed = expected.checkComputed(actual);
            assertThat(computed.agrees()).as(computed.toString()).isTrue();
        }
    }

    /** A beam of a case, solved. */
    private static final class Solved {

        private final Frame frame;
        private final Solution solution;
        private final Diagram diagram;
        private final Deflections deflections;
        private final Shape shape;
        private final boolean spansOnly;

        Solved(Inputs inputs) {
            double length = inputs.number("length");
            List<Contact> props = new ArrayList<>();
            for (Inputs support : inputs.groups("supports")) {
                double stiffness = support.has("stiffness") ? support.number("stiffness") : Double.POSITIVE_INFINITY;
                double settlement = support.has("settlement") ? support.number("settlement") : 0;
                props.add(new Contact.OnProp(0, support.number("at"), stiffness, settlement, true));
            }
            this.frame = new Frame(List.of(), List.of(new Frame.Carrier(0, 0, length, inputs.number("EI"))), props);
            List<UnitLoad.Piece> pieces = new ArrayList<>();
            for (Inputs load : inputs.groups("loads")) {
                pieces.add(piece(load));
            }
            ContactSolver solver = new ContactSolver(frame, List.of(new UnitLoad("all", pieces)));
            this.solution = solver.solve(new LoadCase(new int[] {0}, new double[] {1}));
            this.diagram = solver.diagram(0);
            double[] row = new double[solver.rowSize()];
            solution.writeRow(row);
            diagram.view(row);
            diagram.scan();
            this.deflections = new Deflections(diagram);
            deflections.search(solution.supports(0), 0);
            this.shape = new Shape(diagram, solution.supports(0), support -> movementAt(diagram.at(support)));
            this.spansOnly =
                    inputs.groups("supports").stream().allMatch(s -> !s.has("stiffness") && !s.has("settlement"));
        }

        private double movementAt(double place) {
            for (int c = 0; c < frame.contacts().size(); c++) {
                if (((Contact.OnProp) frame.contacts().get(c)).x() == place) {
                    return solution.movement(c);
                }
            }
            throw new IllegalStateException("no support there");
        }

        private static UnitLoad.Piece piece(Inputs load) {
            return load.text("kind").equals("point")
                    ? new UnitLoad.Point(0, load.number("at"), load.number("value"))
                    : new UnitLoad.Uniform(0, load.number("from"), load.number("to"), load.number("value"));
        }

        double value(Expected expected) {
            assertThat(solution.outcome()).isEqualTo(Solution.Outcome.SETTLED);
            return switch (expected.quantity()) {
                case "reaction" -> solution.force((int) expected.place());
                case "momentAt" -> momentAt(expected.place());
                case "momentMax" -> diagram.sagging();
                case "momentMaxAt" -> diagram.saggingAt();
                case "momentMin" -> -diagram.hogging();
                case "deflectionAt" -> shape.at(expected.place());
                case "deflectionMax" -> spansOnly ? found(deflections.size()) : shape.extreme(1)[0];
                case "deflectionMin" -> shape.extreme(-1)[0];
                case "deflectionMaxAt" -> found(shape.at(deflections.place())) == 0 ? 0 : deflections.place();
                default -> throw new IllegalArgumentException("no such quantity: " + expected.name());
            };
        }

        /** What the search found, after a look by the other method that nothing is greater. */
        private double found(double size) {
            assertThat(shape.extreme(1)[0]).isCloseTo(size, org.assertj.core.data.Percentage.withPercentage(1e-5));
            return size;
        }

        private double momentAt(double place) {
            int i = 0;
            while (i < diagram.stations() - 2 && diagram.at(i + 1) <= place) {
                i++;
            }
            double s = place - diagram.at(i);
            return diagram.moment(i) + diagram.shear(i) * s - diagram.uniform(i) * s * s / 2;
        }
    }
}
