package comparand.hostile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Feeds one reader with changed inputs. An input of which something new is said joins those that are changed further: new is a
 * set of findings, by code and wording, that no input before gave rise to. So the search follows what the reader does; it does
 * not look at which lines of it run.
 */
final class Fuzzing {

    /** Of those that joined, the first and the last: enough, and no more memory than these. */
    private static final int MOST_KEPT = 4000;

    private final FuzzedReader reader;
    private final SplittableRandom random;
    private final List<byte[]> kept;
    private final Mutation mutation;
    private final Set<Integer> said = new HashSet<>();
    private final SortedMap<String, Integer> codes = new TreeMap<>();
    private final Map<String, byte[]> failures = new TreeMap<>();
    private long inputs;
    private long whole;
    private volatile byte[] current = new byte[0];
    private volatile boolean atWork;

    Fuzzing(FuzzedReader reader, long seed) {
        this.reader = reader;
        this.random = new SplittableRandom(seed * 1_000_003 + reader.name().hashCode());
        var seeds = reader.seeds();
        if (seeds.isEmpty()) {
            throw new IllegalArgumentException(reader.name() + " has no seeds");
        }
        this.kept = new ArrayList<>(seeds);
        this.mutation = new Mutation(random, reader.words(), List.copyOf(seeds));
    }

    /** Feeds so many more inputs: the seeds first. */
    Fuzzing run(long count) {
        atWork = true;
        int seeds = reader.seeds().size();
        for (long i = 0; i < count; i++) {
            var input = inputs < seeds ? kept.get((int) inputs) : mutation.of(kept.get(random.nextInt(kept.size())));
            feed(input);
        }
        atWork = false;
        return this;
    }

    private void feed(byte[] input) {
        current = input;
        inputs++;
        var verdict = Oracle.judge(reader, input);
        verdict.fault().ifPresent(f -> failures.putIfAbsent(wording(f), input));
        verdict.read().ifPresent(read -> {
            whole += read.whole() ? 1 : 0;
            var once = new HashSet<String>();
            read.findings().forEach(f -> once.add(f.code()));
            once.forEach(c -> codes.merge(c, 1, Integer::sum));
            var sum = new HashSet<String>();
            read.findings().forEach(f -> sum.add(f.code() + wording(f.message())));
            if (said.add(sum.hashCode())) {
                keep(input);
            }
        });
    }

    private void keep(byte[] input) {
        if (kept.size() < MOST_KEPT) {
            kept.add(input);
        } else {
            kept.set(MOST_KEPT / 2 + random.nextInt(MOST_KEPT / 2), input);
        }
    }

    /** A sentence without what is quoted and counted in it. */
    private static String wording(String sentence) {
        var out = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < sentence.length(); i++) {
            char c = sentence.charAt(i);
            quoted ^= c == '`';
            if (!quoted && (c < '0' || c > '9')) {
                out.append(c);
            }
        }
        return out.toString();
    }

    FuzzedReader reader() {
        return reader;
    }

    boolean isAtWork() {
        return atWork;
    }

    String name() {
        return reader.name();
    }

    long inputs() {
        return inputs;
    }

    /** How many of them a value came of. */
    long whole() {
        return whole;
    }

    int kept() {
        return kept.size();
    }

    /** How many inputs had a finding of each code. */
    SortedMap<String, Integer> codes() {
        return codes;
    }

    /** The first input of each kind of failure. */
    Map<String, byte[]> failures() {
        return failures;
    }

    byte[] current() {
        return current;
    }
}
