package comparand.document.exploration;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All that the scripts of a page are given.
 *
 * @param format name and version of this structure
 * @param run what was run
 * @param words texts with places in braces, by their keys
 * @param sources in the order of their numbers
 * @param devices in printing order
 * @param questions in the order of the dossier
 */
public record Exploration(
        String format,
        RunShown run,
        SortedMap<String, String> words,
        List<SourceShown> sources,
        List<DeviceShown> devices,
        List<QuestionShown> questions) {

    /** This version. */
    public static final String FORMAT = "comparand-page-1";

    public Exploration {
        words = Collections.unmodifiableSortedMap(new TreeMap<>(words));
        sources = List.copyOf(sources);
        devices = List.copyOf(devices);
        questions = List.copyOf(questions);
    }

    /**
     * What was run, and what goes with every line that is copied from the page.
     *
     * @param dossier its name
     * @param asOf the day the report speaks of
     * @param fingerprint of all inputs, whole
     * @param state draft or released, in words
     * @param language BCP 47
     * @param marks such as that the data are invented
     * @param rider the caution that a copied line carries
     */
    public record RunShown(
            String dossier,
            String title,
            String asOf,
            String tool,
            String fingerprint,
            String state,
            String language,
            char decimalSign,
            List<String> marks,
            String rider) {
        public RunShown {
            marks = List.copyOf(marks);
        }
    }

    /** A source that can be left out. */
    public record SourceShown(String id, int number, String reference) {}

    /** A device that can be chosen. */
    public record DeviceShown(String id, String name) {}
}
