package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One step from print or raw data to the number that is compared: what was done, by which formula, with which facts. The
 * words for each kind are chosen when a document is composed.
 *
 * @param formula the formula in letters; empty where nothing was computed
 * @param facts the numbers and texts that went in and came out, by name
 */
public record Step(Kind kind, String formula, SortedMap<String, String> facts) {

    /** What was done. Whether it changes the number's meaning decides between "same" and "same after conversion". */
    public enum Kind {
        /** Found in print. */
        PRINTED(false),
        /** Added in a letter to what is printed. */
        LETTER(false),
        /** Read from a figure by its calibrated axis. */
        READ_FROM_FIGURE(false),
        /** A further tick of a figure's axis, held against the two that calibrate it. */
        AXIS_CHECKED(false),
        /** Both ends of an error bar read from a figure: sampling of the source, and no doubt of the reader. */
        ERROR_BAR(false),
        /** Brought to the metric's unit. */
        UNIT(true),
        /** Parts added or taken away. */
        PARTS(true),
        /** Brought to another variant of the definition. */
        VARIANT(true),
        /** Standard deviation from another kind of spread. */
        SPREAD(true),
        /** Mean and standard deviation estimated from quartiles. */
        QUARTILES(true),
        /** Read off between two published neighbours. */
        INTERPOLATED(true),
        /** Brought to standard blood at the inlet. */
        INLET(true),
        /** A gas volume brought to standard temperature and pressure, dry. */
        VOLUME_BASIS(true),
        /** Units or cases chosen that meet the conditions of a published value. */
        SELECTED(true),
        /** Each unit's own results read off between two steps. */
        READ_OFF(true),
        /** The line through the cases, read at one place. */
        REGRESSED(true),
        /** What a reader must know of the number, though nothing was done to it. */
        CAUTIONED(false),
        /** Computed row by row from raw data. */
        COMPUTED(false),
        /** Repeats of one unit averaged. */
        REPEATS(false),
        /** Mean and standard deviation over units or cases. */
        SUMMARISED(false),
        /** The mean and its uncertainty with regard to the centres the cases come from. */
        CENTRES(false),
        /** Estimated from all units or cases together: a line, a ratio of sums, a median. */
        ESTIMATED(false),
        /** Counted over cases. */
        COUNTED(false);

        private final boolean converts;

        Kind(boolean converts) {
            this.converts = converts;
        }

        public boolean converts() {
            return converts;
        }
    }

    public Step {
        requireNonNull(kind, "kind");
        requireNonNull(formula, "formula");
        facts = Collections.unmodifiableSortedMap(new TreeMap<>(facts));
    }

    /** A step with facts given as name, text, name, text. */
    public static Step of(Kind kind, String formula, String... namesAndTexts) {
        var facts = new TreeMap<String, String>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            facts.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return new Step(kind, formula, facts);
    }

    /** The same step with one more fact. */
    public Step with(String name, String text) {
        var more = new TreeMap<>(facts);
        more.put(name, text);
        return new Step(kind, formula, more);
    }
}
