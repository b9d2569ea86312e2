package comparand.study;

import comparand.model.LocalMember;
import comparand.stat.ExactSum;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One unit or case while its rows are read: sums of what is gathered and of its conditions, whatever the order of its rows.
 * A member of one row, the usual case in a large file, costs no more than its numbers.
 */
final class MemberDraft {

    /** Stands for more than one word; no word of a condition is spelled so. */
    private static final String DISAGREED = "\u0000";

    private final Member member;
    private final double[] first;
    private final String[] words;
    private ExactSum[] sums = {};
    private final List<double[]> points = new ArrayList<>(0);
    private int rows;

    MemberDraft(Member member, int numbers, int words) {
        this.member = member;
        this.first = new double[numbers];
        this.words = new String[words];
        Arrays.fill(this.words, "");
    }

    String id() {
        return member.id();
    }

    int rows() {
        return rows;
    }

    /**
     * A row's numbers; not a number where it has none.
     *
     * @param word the row's words, empty where it has none
     * @param keepsPoints whether the single rows are needed later, for a line or a curve
     */
    void add(double[] numbers, List<String> word, boolean keepsPoints) {
        if (keepsPoints) {
            points.add(numbers);
        }
        if (rows == 0) {
            System.arraycopy(numbers, 0, first, 0, first.length);
        } else {
            if (sums.length == 0) {
                sums = new ExactSum[first.length];
                for (int i = 0; i < first.length; i++) {
                    sums[i] = new ExactSum();
                    add(i, first[i]);
                }
            }
            for (int i = 0; i < first.length; i++) {
                add(i, numbers[i]);
            }
        }
        for (int i = 0; i < words.length; i++) {
            var said = word.get(i);
            if (!said.isEmpty() && !words[i].equals(said)) {
                words[i] = words[i].isEmpty() ? said : DISAGREED;
            }
        }
        rows++;
    }

    private void add(int i, double number) {
        if (!Double.isNaN(number)) {
            sums[i].accept(number);
        }
    }

    /** The mean of a number over the rows that have it; not a number if none has. */
    double mean(int i) {
        return sums.length == 0 ? first[i] : sums[i].count() == 0 ? Double.NaN : sums[i].mean();
    }

    /** The sum of a number over the rows that have it. */
    double sum(int i) {
        return sums.length == 0 ? first[i] : sums[i].sum();
    }

    /** A number of every row. */
    double[] each(int i) {
        return points.stream().mapToDouble(p -> p[i]).toArray();
    }

    /** The single rows turn out not to be needed. */
    void forgetPoints() {
        points.clear();
    }

    /** Conditions in words; empty where the rows are silent or disagree. */
    List<String> words() {
        return Arrays.stream(words).map(w -> w.equals(DISAGREED) ? "" : w).toList();
    }

    /**
     * The member with its number, and the means of its conditions.
     *
     * @param from where the conditions begin among what was gathered
     * @param conditions how many there are
     */
    LocalMember member(double value, int from, int conditions) {
        var amounts = new double[conditions];
        for (int i = 0; i < conditions; i++) {
            amounts[i] = mean(from + i);
        }
        return new LocalMember(member.id(), member.centre(), value, amounts, words(), rows);
    }
}
