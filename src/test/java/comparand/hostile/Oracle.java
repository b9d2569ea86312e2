package comparand.hostile;

import com.sun.management.ThreadMXBean;
import comparand.diag.Diagnostic;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What holds for every input of every reader: a value or findings come of it and never an exception, findings stand at places
 * that the input has, the work is bounded by the size of the input, and the same input gives the same findings.
 */
final class Oracle {

    /** Memory asked for in all, in bytes: work that grows out of all proportion asks for memory too. */
    private static final long ALLOWED = 96L << 20;

    private static final long ALLOWED_PER_BYTE = 20_000;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private Oracle() {}

    /** What an input came to, and what is wrong with that. */
    record Verdict(Optional<Read> read, Optional<String> fault) {}

    static Verdict judge(FuzzedReader reader, byte[] input) {
        long before = THREADS.getCurrentThreadAllocatedBytes();
        Read first;
        Read second;
        try {
            first = reader.read(input.clone());
            long asked = THREADS.getCurrentThreadAllocatedBytes() - before;
            if (asked > ALLOWED + ALLOWED_PER_BYTE * input.length) {
                return new Verdict(
                        Optional.of(first), Optional.of("%d MB for %d bytes".formatted(asked >> 20, input.length)));
            }
            second = reader.read(input.clone());
        } catch (Exception | StackOverflowError | OutOfMemoryError | AssertionError e) {
            return new Verdict(Optional.empty(), Optional.of(place(e)));
        }
        return new Verdict(Optional.of(first), fault(reader, input, first, second));
    }

    private static Optional<String> fault(FuzzedReader reader, byte[] input, Read first, Read second) {
        if (!first.equals(second)) {
            return Optional.of("read twice, it gives two different answers");
        }
        if (!first.whole() && first.findings().stream().noneMatch(Diagnostic::stops)) {
            return Optional.of("neither a value nor a finding that says why not");
        }
        if (!reader.isText() || first.findings().isEmpty()) {
            return Optional.empty();
        }
        var lines = lines(input);
        return first.findings().stream()
                .filter(f -> f.span().file().equals(FuzzedReader.FILE))
                .filter(f -> !isWithin(f, lines))
                .map(f -> "%s stands at %s, where there is nothing".formatted(f.code(), f.span()))
                .findFirst();
    }

    /** Behind the last line there is one more place, as there is behind the last sign of each. */
    private static boolean isWithin(Diagnostic finding, List<Integer> lines) {
        int line = finding.span().line();
        return line <= lines.size() + 1
                && finding.span().column() <= (line <= lines.size() ? lines.get(line - 1) : 0) + 1;
    }

    /** The lengths of the lines in bytes, of which there are as many as signs or more. */
    private static List<Integer> lines(byte[] input) {
        var lengths = new ArrayList<Integer>();
        int from = 0;
        for (int i = 0; i < input.length; i++) {
            if (input[i] == '\n' || (input[i] == '\r' && (i + 1 == input.length || input[i + 1] != '\n'))) {
                lengths.add(i - from);
                from = i + 1;
            }
        }
        lengths.add(input.length - from);
        return lengths;
    }

    /** An exception by where in our code it began. */
    private static String place(Throwable e) {
        var ours = new ArrayList<String>();
        for (var frame : e.getStackTrace()) {
            if (frame.getClassName().startsWith("comparand.") && ours.size() < 3) {
                ours.add(frame.getClassName().substring("comparand.".length()) + "." + frame.getMethodName() + ":"
                        + frame.getLineNumber());
            }
        }
        return e.getClass().getSimpleName() + " in " + String.join(" < ", ours) + ": "
                + String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }
}
