package comparand.study.quality;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One row of a raw file as rules see it: with what other files say of its case, unit and device. */
public interface QualityRow {

    /** Of the file, or of the sheet. */
    int line();

    /** The case, run or unit the row belongs to, told apart from those of other centres; empty if nobody names it. */
    Optional<String> member();

    /** The number or name of the sample within its member. */
    Optional<String> sample();

    /** A number that stands in this very row, as written. */
    Optional<Written> written(String id);

    /**
     * A quantity that was measured or stated, by this row, by what describes it, for its whole file or by the device's
     * label; in the unit the catalogue has for the input, condition or metric.
     */
    Optional<Double> given(String id);

    /** A quantity that is given or can be computed, in the catalogue's unit. */
    Optional<Double> number(String id);

    /** A metric by its formula of one variant, whether it is given or not; empty where that formula must not be used. */
    Optional<Double> computed(String metric, String aspect, String variant);

    /** A condition in words. */
    Optional<String> word(String condition);

    /** The variant of an aspect of the definition that the row, or its file, states. */
    Optional<List<String>> variant(String aspect);

    /** Whether an event is said to have happened. */
    boolean happened(String event);

    /** The headings of the columns for remarks in which something stands. */
    Set<String> remarks();
}
