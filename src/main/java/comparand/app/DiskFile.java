package comparand.app;

import comparand.digest.Sha;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.Optional;

/**
 * A new file on its way to the disk. Its SHA-256 is taken from the bytes as they pass; and what the disk refused is remembered,
 * because not every library hands on the fault it was given.
 */
final class DiskFile extends OutputStream {

    private final FileChannel channel;
    private final OutputStream out;
    private final MessageDigest sha = Sha.digest();
    private Optional<IOException> refused = Optional.empty();

    DiskFile(Path file) throws IOException {
        this.channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        this.out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
    }

    private interface Step {
        void take() throws IOException;
    }

    private void tried(Step step) throws IOException {
        try {
            step.take();
        } catch (IOException e) {
            refused = refused.or(() -> Optional.of(e));
            throw e;
        }
    }

    @Override
    public void write(int b) throws IOException {
        tried(() -> out.write(b));
        sha.update((byte) b);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        tried(() -> out.write(bytes, from, length));
        sha.update(bytes, from, length);
    }

    @Override
    public void flush() throws IOException {
        tried(out::flush);
    }

    /** All is on the disk after it; to be called by any library as often as it likes. */
    @Override
    public void close() throws IOException {
        if (!channel.isOpen()) {
            return;
        }
        try (channel) {
            tried(() -> {
                out.flush();
                channel.force(true);
            });
        }
    }

    /** The first fault of the disk. */
    Optional<IOException> refused() {
        return refused;
    }

    /** The SHA-256 of all that was written; asked once, at the end. */
    String sha() {
        return Sha.of(sha);
    }
}
