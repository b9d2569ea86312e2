package comparand.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SideBySideTest {

    @Test
    void givesWhatEachGaveInTheOrderOfTheWorksAndNotOfTheirEnds() throws IOException {
        var second = new CountDownLatch(1);
        boolean alone = Runtime.getRuntime().availableProcessors() == 1;
        var works = List.<Callable<String>>of(
                () -> {
                    // ends behind the second wherever two can run
                    assertThat(alone || second.await(60, TimeUnit.SECONDS)).isTrue();
                    return "first";
                },
                () -> {
                    second.countDown();
                    return "second";
                });

        assertThat(SideBySide.all(works)).containsExactly("first", "second");
    }

    @Test
    void tellsOfTheFirstFaultInTheirOrderWhenNothingRunsAnyMore() {
        var done = new AtomicInteger();
        var works = IntStream.range(0, 40)
                .<Callable<Integer>>mapToObj(i -> () -> {
                    done.incrementAndGet();
                    if (i == 7 || i == 3) {
                        throw new IOException("no room for " + i);
                    }
                    return i;
                })
                .toList();

        assertThatThrownBy(() -> SideBySide.all(works))
                .isInstanceOf(IOException.class)
                .hasMessage("no room for 3");
        assertThat(done).hasValue(40);
    }

    @Test
    void aFaultOfTheProgramStaysOne() {
        var works = List.<Callable<String>>of(() -> {
            throw new IllegalStateException("a fault");
        });

        assertThatThrownBy(() -> SideBySide.all(works))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("a fault");
    }
}
