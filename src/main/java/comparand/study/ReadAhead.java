package comparand.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.function.Consumer;

/**
 * Lets one thread read rows while the one that asked for them works on those read before: of a large file either is half of the
 * work. What is handed over is done in the thread that asked, one after the other and in the order of the rows, so that whatever
 * is collected there needs no guard.
 */
final class ReadAhead {

    private static final int IN_A_BATCH = 256;
    private static final int BATCHES = 16;

    private final BlockingQueue<Batch> read = new ArrayBlockingQueue<>(BATCHES);
    private List<Runnable> filling = new ArrayList<>(IN_A_BATCH);

    private ReadAhead() {}

    /**
     * Some of what is to be done.
     *
     * @param failure what ended the reading behind it; empty as long as it goes on or where it came to its end
     */
    private record Batch(List<Runnable> work, boolean last, Optional<Throwable> failure) {}

    /**
     * Runs a reader in a thread of its own, and here what it hands over.
     *
     * @throws RuntimeException what the reader ended with, after all it had handed over before; or what the work ended with
     */
    static void run(Consumer<Consumer<Runnable>> reader) {
        var ahead = new ReadAhead();
        var thread = new Thread(() -> ahead.read(reader), "rows");
        thread.setDaemon(true);
        thread.start();
        try {
            ahead.work();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while rows were read", e);
        } finally {
            // where the work failed, nobody waits for the rest
            thread.interrupt();
        }
    }

    private void read(Consumer<Consumer<Runnable>> reader) {
        try {
            var failure = failure(reader);
            put(true, failure);
        } catch (Stopped nobodyWaits) {
            Thread.currentThread().interrupt();
        }
    }

    private Optional<Throwable> failure(Consumer<Consumer<Runnable>> reader) {
        try {
            reader.accept(this::add);
            return Optional.empty();
        } catch (Stopped nobodyWaits) {
            throw nobodyWaits;
        } catch (RuntimeException | Error e) {
            return Optional.of(e);
        }
    }

    private void add(Runnable work) {
        filling.add(work);
        if (filling.size() == IN_A_BATCH) {
            put(false, Optional.empty());
        }
    }

    private void put(boolean last, Optional<Throwable> failure) {
        try {
            read.put(new Batch(filling, last, failure));
            filling = new ArrayList<>(IN_A_BATCH);
        } catch (InterruptedException e) {
            throw new Stopped(e);
        }
    }

    private void work() throws InterruptedException {
        Batch batch;
        do {
            batch = read.take();
            batch.work.forEach(Runnable::run);
            if (batch.failure.orElse(null) instanceof Error error) {
                throw error;
            }
            if (batch.failure.orElse(null) instanceof RuntimeException failure) {
                throw failure;
            }
        } while (!batch.last);
    }

    /** The work failed, and the reader is to end. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stopped(InterruptedException cause) {
            super(cause);
        }
    }
}
