package dev.underprop.engine.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.underprop.engine.Halt;
import dev.underprop.engine.Halted;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Setting up a floor of thousands of joists takes seconds: it must be left as soon as nobody wants the answer any more. */
class SetUpTest {

    private final Layout floor = Floors.large();

    @Test
    void isLeftBeforeTheFirstUnit() {
        assertThatExceptionOfType(Halted.class)
                .isThrownBy(() -> new ContactSolver(floor.frame(), floor.units(), () -> true));
    }

    @Test
    void asksForEveryUnitAndMember() {
        AtomicInteger asked = new AtomicInteger();
        Halt counting = () -> asked.incrementAndGet() < 0;
        assertThat(new ContactSolver(floor.frame(), floor.units(), counting)).isNotNull();
        assertThat(asked.get())
                .isGreaterThanOrEqualTo(floor.units().size() + floor.frame().members());
    }
}
