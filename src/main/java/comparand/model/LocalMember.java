package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One independent result: a unit or a case with its one number, and the conditions under which it came about.
 *
 * <p>Compact, so that a million of them fit: numbers stand in the order of the series' varying conditions.
 */
public final class LocalMember {

    private final String id;
    private final String centre;
    private final double value;
    private final double[] amounts;
    private final List<String> words;
    private final int rows;
    private final double[] runs;

    private static final double[] NO_RUNS = {};

    /**
     * A member.
     *
     * @param id of the unit or case; unique together with the centre
     * @param centre empty if the study names none
     * @param amounts means over the member's rows, each in its condition's unit; not a number where none was recorded
     * @param words conditions in words, in the series' order; empty where none was recorded or the rows disagree
     * @param rows how many rows it was made from
     */
    public LocalMember(String id, String centre, double value, double[] amounts, List<String> words, int rows) {
        this(id, centre, value, amounts, words, rows, NO_RUNS);
    }

    private LocalMember(
            String id, String centre, double value, double[] amounts, List<String> words, int rows, double[] runs) {
        this.id = requireNonNull(id, "id");
        this.centre = requireNonNull(centre, "centre");
        this.value = value;
        this.amounts = amounts.clone();
        this.words = List.copyOf(words);
        this.rows = rows;
        this.runs = runs;
    }

    public String id() {
        return id;
    }

    public String centre() {
        return centre;
    }

    public double value() {
        return value;
    }

    /** The amount of a varying condition, counted from 0. */
    public OptionalDouble amount(int condition) {
        return Double.isNaN(amounts[condition]) ? OptionalDouble.empty() : OptionalDouble.of(amounts[condition]);
    }

    /** The word of a condition in words, counted from 0; empty where there is none. */
    public String word(int condition) {
        return words.get(condition);
    }

    public int rows() {
        return rows;
    }

    /** The single runs behind the value, in ascending order, where this is the only unit tested; else none. */
    public double[] runs() {
        return runs.clone();
    }

    /** The same member, the only one tested, with its single runs. */
    public LocalMember withRuns(double[] each) {
        return new LocalMember(
                id,
                centre,
                value,
                amounts,
                words,
                rows,
                Arrays.stream(each).sorted().toArray());
    }

    /** The same member with another number: its own curve read off elsewhere. */
    public LocalMember withValue(double other) {
        return new LocalMember(id, centre, other, amounts, words, rows);
    }

    /** The same member at another amount of one condition. */
    public LocalMember at(int condition, double amount) {
        var moved = amounts.clone();
        moved[condition] = amount;
        return new LocalMember(id, centre, value, moved, words, rows, runs);
    }

    @Override
    public String toString() {
        return centre + "/" + id + " = " + value + " " + Arrays.toString(amounts);
    }
}
