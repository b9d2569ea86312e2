package comparand.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Does things side by side, as many at once as there are processors, and begins them in the order in which they are given. */
final class SideBySide {

    private SideBySide() {}

    /**
     * What each of them gives, in their order. Nothing runs any more when it returns, whichever way.
     *
     * @throws IOException of the first in their order that failed with one
     */
    static <T> List<T> all(List<Callable<T>> works) throws IOException {
        var workers = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            var given = new ArrayList<T>();
            for (var done : workers.invokeAll(works)) {
                given.add(given(done));
            }
            return given;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted at work side by side", e);
        } finally {
            workers.shutdownNow();
        }
    }

    private static <T> T given(Future<T> done) throws IOException, InterruptedException {
        try {
            return done.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException io) {
                throw io;
            }
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
