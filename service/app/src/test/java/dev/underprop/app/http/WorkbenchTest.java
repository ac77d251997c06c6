package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class WorkbenchTest {

    @Test
    void givesTheResult() {
        assertThat(new Workbench(1, 1, Duration.ofSeconds(5)).run(() -> "done")).isEqualTo("done");
    }

    @Test
    void passesOnWhatATaskThrows() {
        Workbench workbench = new Workbench(1, 1, Duration.ofSeconds(5));

        assertThatThrownBy(() -> workbench.run(() -> {
                    throw new IllegalArgumentException("wrong");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("wrong");
    }

    @Test
    void turnsAwayWhatItHasNoPlaceFor() throws InterruptedException {
        Workbench workbench = new Workbench(1, 1, Duration.ofSeconds(20));
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch end = new CountDownLatch(1);
        CompletableFuture<Boolean> atWork = CompletableFuture.supplyAsync(() -> workbench.run(() -> {
            begun.countDown();
            return end.await(20, TimeUnit.SECONDS);
        }));
        assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
        CompletableFuture<String> waiting = CompletableFuture.supplyAsync(() -> workbench.run(() -> "waited"));
        while (workbench.waiting() == 0) {
            Thread.sleep(1);
        }

        assertThatThrownBy(() -> workbench.run(() -> "too many")).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.problem().getStatus()).isEqualTo(503);
            assertThat(refused.headers()).containsEntry("Retry-After", "2");
        });

        end.countDown();
        assertThat(atWork.join()).isTrue();
        assertThat(waiting.join()).isEqualTo("waited");
    }

    @Test
    void givesUpOnWhatTakesTooLong() {
        Workbench workbench = new Workbench(1, 1, Duration.ofMillis(50));

        assertThatThrownBy(() -> workbench.run(() -> new CountDownLatch(1).await(20, TimeUnit.SECONDS)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.problem().getStatus()).isEqualTo(503));
    }
}
