package comparand.study;

import java.util.TreeSet;
import java.util.stream.Collectors;

/** The lines of a file that share a finding: the first dozen by number, the others counted. */
final class Lines {

    private static final int LISTED = 12;

    private final TreeSet<Integer> first = new TreeSet<>();
    private int count;

    void add(int line) {
        count++;
        first.add(line);
        if (first.size() > LISTED) {
            first.pollLast();
        }
    }

    int count() {
        return count;
    }

    int first() {
        return first.first();
    }

    /** Such as {@code lines 3, 5, 8}, or {@code lines 2, 3, ... and 9 more}. */
    @Override
    public String toString() {
        var listed = first.stream().map(String::valueOf).collect(Collectors.joining(", "));
        int more = count - first.size();
        return (count == 1 ? "line " : "lines ") + listed + (more > 0 ? " and %d more".formatted(more) : "");
    }
}
