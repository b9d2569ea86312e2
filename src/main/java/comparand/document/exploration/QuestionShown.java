package comparand.document.exploration;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A question of the dossier with its pairs, and where they stand in the document.
 *
 * @param metric its id
 * @param name the metric in words
 * @param asks the question in the readers' words
 * @param section name of the section of the document
 * @param unit of values, as printed; empty for pure numbers
 * @param differenceUnit of differences, as printed; may be empty
 * @param margin absent where none was set
 * @param tolerances of the conditions in numbers that stand in a pair
 * @param table name of the table of pairs
 * @param columns where in it what changes stands
 * @param grid name of the table of conditions, in the same order of rows
 * @param gridFirst its first column of a condition
 * @param gridColumns what its columns of conditions are about, from the first on
 * @param summary where the list of questions sums it up
 * @param pairs in the order of the rows
 * @param pools of the sources of one local result
 */
public record QuestionShown(
        String metric,
        String name,
        String asks,
        String section,
        String unit,
        String differenceUnit,
        Optional<MarginShown> margin,
        List<ToleranceShown> tolerances,
        String table,
        Columns columns,
        String grid,
        int gridFirst,
        List<String> gridColumns,
        Summary summary,
        List<PairShown> pairs,
        List<PoolShown> pools) {

    public QuestionShown {
        tolerances = List.copyOf(tolerances);
        gridColumns = List.copyOf(gridColumns);
        pairs = List.copyOf(pairs);
        pools = List.copyOf(pools);
    }

    /**
     * A margin.
     *
     * @param value in the metric's unit
     * @param number as written
     * @param unit as written, as it stands behind the number in sentences, with what joins them
     * @param text as it stands in sentences
     */
    public record MarginShown(double value, double number, String unit, String text) {}

    /**
     * How far apart a condition may lie and count as the same.
     *
     * @param kind equal, absolute or relative
     * @param amount as written; per cent where relative, 0 where equal
     * @param perUnit what makes the amount a number of the unit in which pairs hold the condition, or a share
     * @param unit as written behind the amount
     * @param words as printed
     */
    public record ToleranceShown(
            String condition, String name, String kind, double amount, double perUnit, String unit, String words) {}

    /** Columns of the table of pairs, from 0. */
    public record Columns(int theirs, int difference, int answer, int standing, int notes) {}

    /**
     * A row of the list of questions, and its cells of the margin and of answers beside the present device and beside what was
     * published.
     */
    public record Summary(String table, int row, int margin, int present, int published) {}

    /**
     * What sources say together, worked out for every choice of them.
     *
     * @param ours id of the local result
     * @param table where it is printed
     * @param row the row there
     * @param sources ids, in order
     * @param digitised those of which the value was read from a figure
     * @param subsets of some sources; the first is of all of them
     */
    public record PoolShown(
            String ours,
            String table,
            OptionalInt row,
            List<String> sources,
            List<String> digitised,
            List<Subset> subsets) {
        public PoolShown {
            sources = List.copyOf(sources);
            digitised = List.copyOf(digitised);
            subsets = List.copyOf(subsets);
        }
    }

    /** What is said of the sources that are kept. */
    public record Subset(List<String> kept, List<String> sentences) {
        public Subset {
            kept = List.copyOf(kept);
            sentences = List.copyOf(sentences);
        }
    }
}
