package comparand.model;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What became of the rows of the raw files: every one is kept, dropped or held, and the counts add up.
 *
 * @param counts kept members and rows by centre, device and step
 * @param label how often a device was used outside of its label
 */
public record RowLog(List<FileLog> files, List<Count> counts, List<LabelUse> label) {

    public RowLog {
        files = List.copyOf(files);
        counts = List.copyOf(counts);
        label = List.copyOf(label);
    }

    /** What becomes of a row that is not simply kept. */
    public enum Fate {
        /** Left out by a recorded decision. */
        DROPPED,
        /** Kept out of results because it says what cannot be. */
        HELD,
        /** Takes part, and is worth a second look. */
        REMARKED
    }

    /**
     * A row that is not simply kept.
     *
     * @param line the line of the file, or the row of a sheet
     * @param code of the decision or check
     */
    public record RowNote(Fate fate, int line, String code, String reason) {
        public RowNote {
            requireNonNull(fate, "fate");
            requireNonNull(code, "code");
            requireNonNull(reason, "reason");
        }
    }

    /**
     * One file.
     *
     * @param rows all rows behind the headings: {@code rows = kept + dropped + held}
     * @param kept rows that take part, with and without remark
     * @param notes in file order, and at most some thousands
     * @param unlisted how many more notes there are
     */
    public record FileLog(
            String study, String file, int rows, int kept, int dropped, int held, List<RowNote> notes, int unlisted) {
        public FileLog {
            notes = List.copyOf(notes);
            if (rows != kept + dropped + held) {
                throw new IllegalArgumentException(
                        "%s: %d rows, but %d kept, %d dropped and %d held".formatted(file, rows, kept, dropped, held));
            }
        }
    }

    /**
     * Kept members and rows of a device in a centre: of all steps together, and of each.
     *
     * @param step such as {@code blood flow 1.0 L/min}; empty for all together
     * @param level what is counted as a member, in the plural: units, cases
     */
    public record Count(String study, String level, String centre, String device, String step, int members, int rows) {}

    /**
     * Use outside of a label.
     *
     * @param level what is counted, in the plural
     * @param limit the labelled range as written
     * @param outside members that were outside of it at least once
     * @param of members for which it is known
     */
    public record LabelUse(
            String study, String level, String device, String condition, String limit, int outside, int of) {}
}
