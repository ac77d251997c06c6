package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderedWorkTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void resultsComeInTheOrderOfTheInput(int workers) {
        List<Integer> results = new ArrayList<>();
        try (OrderedWork work = new OrderedWork(workers)) {
            work.run(numbers(2000), number -> slowly(number, number % 97 == 0), results::add, () -> false);
        }

        assertThat(results).isEqualTo(IntStream.range(0, 2000).boxed().toList());
    }

    @Test
    void inputIsReadOnlySoFarAheadOfTheOldestResult() {
        AtomicInteger read = new AtomicInteger();
        AtomicInteger ahead = new AtomicInteger();
        AtomicInteger out = new AtomicInteger();
        Iterator<Integer> counted = new Iterator<>() {
            @Override
            public boolean hasNext() {
                return read.get() < 5000;
            }

            @Override
            public Integer next() {
                ahead.accumulateAndGet(read.get() - out.get(), Math::max);
                return read.getAndIncrement();
            }
        };
        try (OrderedWork work = new OrderedWork(2)) {
            work.run(counted, number -> slowly(number, number == 0), number -> out.incrementAndGet(), () -> false);
        }

        assertThat(out.get()).isEqualTo(5000);
        assertThat(ahead.get()).isBetween(2, 64);
    }

    @Test
    void whatHasBegunIsFinishedWhenToldToStop() {
        AtomicBoolean stopped = new AtomicBoolean();
        AtomicInteger begun = new AtomicInteger();
        List<Integer> results = new ArrayList<>();
        try (OrderedWork work = new OrderedWork(2)) {
            work.run(
                    numbers(100_000),
                    number -> {
                        begun.incrementAndGet();
                        return number;
                    },
                    number -> {
                        results.add(number);
                        stopped.compareAndSet(false, number == 500);
                    },
                    stopped::get);
        }

        assertThat(results).hasSize(begun.get()).hasSizeBetween(501, 600);
    }

    @Test
    void aFailureOfTheWorkComesOut() {
        try (OrderedWork work = new OrderedWork(2)) {
            assertThatThrownBy(() -> work.run(
                            numbers(10),
                            number -> {
                                throw new IllegalStateException("no");
                            },
                            number -> {},
                            () -> false))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("no");
        }
    }

    private static Iterator<Integer> numbers(int count) {
        return IntStream.range(0, count).iterator();
    }

    private static int slowly(int number, boolean slow) {
        if (slow) {
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        return number;
    }
}
