package comparand.manual;

import comparand.manual.example.Bench;
import comparand.manual.example.Example;
import comparand.manual.example.Said;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * A finding with what the tool says of its examples.
 *
 * @param shown its examples after they were run
 */
record FindingShown(Finding finding, List<Example.Shown> shown) {

    /** What a severity means for a run. */
    static final Map<String, String> SEVERITIES = severities();

    FindingShown {
        shown = List.copyOf(shown);
    }

    static FindingShown of(Finding finding, Bench bench) {
        return new FindingShown(
                finding,
                finding.examples().stream()
                        .map(e -> e.run(bench, finding.code()))
                        .toList());
    }

    private static Map<String, String> severities() {
        var all = new LinkedHashMap<String, String>();
        all.put("STOP", "nothing is written until it is mended");
        all.put("HOLD", "one value, row or reference is kept out; all else goes on");
        all.put("NOTE", "nothing is kept out; it is printed among the limitations of the documents");
        all.put("ROW LOG", "no finding is printed; it stands on the sheet Row log of the workbook");
        return all;
    }

    /** The severities its examples are found with, in the order of {@link #SEVERITIES}. */
    List<String> found() {
        var met = new TreeSet<String>();
        shown.forEach(s -> s.findings().forEach(f -> met.add(f.severity())));
        return SEVERITIES.keySet().stream().filter(met::contains).toList();
    }

    String why() {
        return finding.why().isEmpty() && !shown.isEmpty() ? first().why() : finding.why();
    }

    String instead() {
        return finding.instead().isEmpty() && !shown.isEmpty() ? first().fix() : finding.instead();
    }

    private Said first() {
        return shown.get(0).findings().get(0);
    }

    /** Further sentences under the same code, each with what it says to do; none twice. */
    List<Said> more() {
        var seen = new TreeSet<String>();
        var more = new ArrayList<Said>();
        for (var example : shown) {
            for (var said : example.findings()) {
                if (seen.add(alike(said.message()))) {
                    more.add(said);
                }
            }
        }
        return more.isEmpty() ? more : more.subList(1, more.size());
    }

    /** A sentence without the words it quotes and the numbers in it. */
    static String alike(String message) {
        return message.replaceAll("`[^`]*`", "`").replaceAll("[0-9]++(?:[.,][0-9]++)*+", "0");
    }
}
