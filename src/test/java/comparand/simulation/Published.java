package comparand.simulation;

import java.util.List;

/**
 * A published value, with what is true behind it.
 *
 * @param id unique in its library
 * @param source the file it stands in
 * @param at the conditions it was obtained under
 * @param silence what its source does not say of them
 * @param trulyOther whether a condition that decides lies further from home than the tolerance, said or not
 * @param mean the true mean behind it, mmHg
 * @param difference the true difference, local minus published, under the same conditions, mmHg
 * @param limit what a limit is set at, mmHg; without meaning for other forms
 */
record Published(
        String id,
        String source,
        Setting at,
        Silence silence,
        Unlike unlike,
        boolean trulyOther,
        Print print,
        double mean,
        double difference,
        double limit,
        PrintedForm form) {

    /**
     * As it stands in the source.
     *
     * @param printed the text of the table
     * @param record the lines of the record that hold its numbers, without indent
     */
    record PrintedForm(String printed, List<String> record) {}

    /** The true local mean under its conditions. */
    double local() {
        return mean + difference;
    }

    /** Whether the tool is right to show it and not compare it. */
    boolean isToBeWithheld() {
        return trulyOther || silence != Silence.NONE;
    }
}
