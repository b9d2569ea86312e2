package comparand.output;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** The sheets of a workbook in the order in which they are read. */
final class Sheets {

    private Sheets() {}

    /** The one sheet that holds charts and no table. */
    static final String FIGURES = "Figures";

    private static final List<String> SHEETS = List.of(
            "Read first",
            "Questions",
            "Compare",
            "Sources together",
            "Scenarios",
            "Conditions",
            "Not comparable",
            "Unknowns",
            "Local results",
            "Lines",
            FIGURES,
            "Local data",
            "Row log",
            "Characteristics",
            "Tolerances",
            "Costs",
            "Cost of a case",
            "Weights",
            "Weights varied",
            "Flow of records",
            "Searches",
            "Screening",
            "Sources",
            "Set aside",
            "Findings",
            "Changes",
            "Trail");

    /** Sheets that stand there only where the dossier gives what they are made from. */
    static List<String> of(JsonNode results) {
        return SHEETS.stream()
                .filter(s -> !s.equals("Cost of a case")
                        || !results.get("costs").get("lines").isEmpty())
                .filter(s ->
                        !List.of("Flow of records", "Searches", "Screening").contains(s) || results.has("screening"))
                .filter(s -> !s.startsWith("Weights") || results.has("weights"))
                .toList();
    }
}
