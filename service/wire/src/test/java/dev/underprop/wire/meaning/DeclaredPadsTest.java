package dev.underprop.wire.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Pad.Block;
import dev.underprop.engine.plan.Pad.Cast;
import dev.underprop.engine.plan.Pad.Make;
import dev.underprop.engine.plan.Pad.Plate;
import dev.underprop.engine.plan.Pad.Rated;
import dev.underprop.engine.plan.Pad.SlabPart;
import dev.underprop.engine.plan.Pad.Stack;
import dev.underprop.engine.plan.Pad.Stands;
import dev.underprop.engine.plan.Pad.Unmade;
import dev.underprop.engine.plan.Post;
import dev.underprop.wire.tree.Format;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan declares of its pads comes to the engine in SI; the second post of the first shore stands on each in turn. */
class DeclaredPadsTest {
    private static final Offset<Double> EXACT = within(1e-3);
    private static final double POUND = 4.4482216152605;
    private static final double PSI = POUND / (0.0254 * 0.0254);

    /** The plan in YAML names its pads as the one in JSON does. */
    private static Pad pad(String text, String name) {
        String moved = text.replace("\"pad\": \"mat\"", "\"pad\": \"" + name + "\"");
        return Reading.understood(moved, Format.JSON).plan().shores().stream()
                .flatMap(shore -> shore.posts().stream())
                .map(Post::footing)
                .filter(Pad.class::isInstance)
                .map(Pad.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Make make(String name) {
        return pad(Reading.text("declared.json"), name).make();
    }

    @Test
    void everyMakeIsRead() {
        assertThat(((Cast) make("cast")).strength()).isCloseTo(3000 * PSI, EXACT);
        Rated stock = (Rated) make("stock");
        assertThat(stock.load()).isCloseTo(4000 * POUND, EXACT);
        assertThat(stock.source()).isEqualTo("invented sheet");
        assertThat(make("wall block")).isEqualTo(new Block(true, Double.NaN));
        assertThat(((Plate) make("plate")).yield()).isCloseTo(36_000 * PSI, EXACT);
        SlabPart slab = (SlabPart) make("floor slab");
        assertThat(slab.strength()).isCloseTo(3000 * PSI, EXACT);
        assertThat(slab.measured()).isEqualTo("core beside post 2");
        assertThat(slab.stands()).isEqualTo(Stands.EDGE);
        Stack stack = (Stack) make("stack");
        assertThat(stack.members()).isEqualTo(2);
        assertThat(stack.timber()).isCloseTo(0.1397, within(1e-12));
        assertThat(stack.bearing()).isCloseTo(400 * PSI, EXACT);
        assertThat(stack.solid()).isTrue();
        Pad.Mat sleepers = (Pad.Mat) make("sleepers");
        assertThat(sleepers.sleepers()).isEqualTo(3);
        assertThat(sleepers.bearers()).isEqualTo(1);
        assertThat(sleepers.alongX()).isTrue();
        assertThat(sleepers.timber().ply().breadth()).isCloseTo(2.5 * 0.0254, within(1e-12));
        assertThat(sleepers.timber().ply().depth()).isCloseTo(11.25 * 0.0254, within(1e-12));
        assertThat(sleepers.timber().details().treatment()).isEqualTo(Member.Treated.INCISED);
        assertThat(sleepers.timber().details().origin())
                .isEqualTo(new Member.Assumed("the carpenter, by the look of it"));
        assertThat(((Rated) make("mat")).load()).isCloseTo(9000 * POUND, EXACT);
    }

    /** What is taken out is never made up for, and what may be hollow has no rating. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cast|\"make\": \"cast\", ",
                "stock|\"make\": \"solid block\", ",
                "plate|, \"yieldStress\": \"36 ksi\"",
                "stack|, \"crib\": { \"timbers\": 2, \"width\": \"5.5 in\", \"bearing\": \"400 psi\", \"source\": \"invented sheet\", \"solidEnds\": true }",
                "mat|, \"rating\": \"9 kip\", \"ratingSource\": \"invented sheet\""
            })
    void whatIsNotDeclaredIsUnmade(String name, String declaration) {
        String text = Reading.text("declared.json");
        assertThat(text).contains(declaration);
        assertThat(pad(text.replace(declaration, ""), name).make()).isInstanceOf(Unmade.class);
    }

    @Test
    void blocksAndSlabsLackWhatIsTakenOut() {
        String text = Reading.text("declared.json");
        assertThat(pad(text.replace(", \"rating\": \"4 kip\", \"ratingSource\": \"invented sheet\"", ""), "stock")
                        .make())
                .isEqualTo(new Block(false, Double.NaN));
        SlabPart slab = (SlabPart) pad(
                        text.replace(", \"thicknessMeasured\": \"core beside post 2\", \"stands\": \"edge\"", ""),
                        "floor slab")
                .make();
        assertThat(slab.measured()).isEmpty();
        assertThat(slab.stands()).isEqualTo(Stands.UNSTATED);
        assertThat(((Stack) pad(text.replace(", \"solidEnds\": true", ""), "stack")
                                .make())
                        .solid())
                .isFalse();
    }

    @Test
    void centringIsStatedOrNot() {
        String text = Reading.text("declared.json");
        assertThat(((Pad.Within) pad(text, "cast").centring()).distance()).isCloseTo(0.0254, within(1e-12));
        assertThat(pad(text, "stock").centring()).isEqualTo(new Pad.Anywhere());
    }

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void theGroundGivesAsStated(String file) {
        Ground.Modulus gives =
                (Ground.Modulus) Reading.file(file).plan().ground().givesAs();
        assertThat(gives.soft()).isCloseTo(50 * PSI / 0.0254, within(1e-2));
        assertThat(gives.stiff()).isCloseTo(200 * PSI / 0.0254, within(1e-2));
        assertThat(gives.source()).isEqualTo("invented plate test");
    }
}
