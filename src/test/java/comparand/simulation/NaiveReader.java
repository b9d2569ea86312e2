package comparand.simulation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import comparand.simulation.NaiveInterval.Group;
import comparand.simulation.Reading.Why;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads a library's files and sets numbers side by side as they stand. Units are converted; conditions are not looked at but
 * for the flow of a bench test, where the nearest step is taken, or the middle one if the source is silent. Every row counts
 * as an independent result. What stands after ± is taken as a standard deviation, and so is half of a printed range. A value
 * without spread or number is taken as exact, and a limit as the value.
 */
final class NaiveReader {

    private static final YAMLMapper YAML = new YAMLMapper();
    private static final double MMHG_IN_KPA = 7.50062;

    private final Path library;
    private final boolean clinical;
    private final double margin;
    private final List<Row> rows = new ArrayList<>();

    private record Row(String device, double flow, double drop) {}

    private NaiveReader(Path library) throws IOException {
        this.library = library;
        this.clinical = yaml("studies/local/study.yaml").get("kind").asText().equals("clinical");
        this.margin =
                mmHg(yaml(SimulatedLibrary.DOSSIER).get("questions").get(0).get("margin"));
        var lines = Files.readAllLines(library.resolve("studies/local/" + StudyFile.DATA));
        var heading = List.of(lines.get(0).split(",", -1));
        for (var line : lines.subList(1, lines.size())) {
            var cells = line.split(",", -1);
            rows.add(new Row(
                    cells[heading.indexOf("device")],
                    Double.parseDouble(cells[heading.indexOf("flow_lpm")]),
                    Double.parseDouble(cells[heading.indexOf("p_in_mmhg")])
                            - Double.parseDouble(cells[heading.indexOf("p_out_mmhg")])));
        }
    }

    /**
     * What is said.
     *
     * @param published by the id of the value
     * @param present of the device in use today, if it was measured
     */
    record Says(Map<String, Reading> published, Optional<Reading> present) {
        Reading of(String value) {
            return Optional.ofNullable(published.get(value)).orElseThrow();
        }
    }

    static Says read(Path library) throws IOException {
        var reader = new NaiveReader(library);
        return new Says(reader.published(), reader.present());
    }

    private Map<String, Reading> published() throws IOException {
        var says = new TreeMap<String, Reading>();
        try (var files = Files.list(library.resolve("sources"))) {
            for (var file : files.sorted().toList()) {
                for (var value : YAML.readTree(Files.readString(file)).get("values")) {
                    if (value.get("metric").asText().equals("pressure-drop")) {
                        says.put(value.get("id").asText(), says(value));
                    }
                }
            }
        }
        return says;
    }

    private Reading says(JsonNode value) {
        var ours = ours("E", value.get("conditions").get("blood-flow").asText());
        double figure = mmHg(value.get(centre(value)));
        var n = value.get("n").asText().split(" ", -1)[0];
        boolean counted = value.has("spread") && !n.equals("not");
        var interval = counted
                ? NaiveInterval.welch(
                        ours, new Group(figure, sd(value.get("spread").get("of")), Integer.parseInt(n)))
                : NaiveInterval.againstFigure(ours, figure);
        return NaiveInterval.reading(interval, margin);
    }

    private static String centre(JsonNode value) {
        return List.of("mean", "median", "value", "at-most").stream()
                .filter(value::has)
                .findFirst()
                .orElseThrow();
    }

    private static double sd(JsonNode of) {
        return of.isArray() ? (mmHg(of.get(1)) - mmHg(of.get(0))) / 2 : mmHg(of);
    }

    private Optional<Reading> present() throws IOException {
        long measured = rows.stream().filter(r -> r.device.equals("P")).count();
        if (measured < 2) {
            return measured == 0 ? Optional.empty() : Optional.of(new Reading.Withheld(Why.UNTESTABLE));
        }
        var at = yaml(SimulatedLibrary.DOSSIER).get("questions").get(0).path("at");
        var flow = at.path("steps").path(0).asText("not reported");
        return Optional.of(NaiveInterval.reading(NaiveInterval.welch(ours("E", flow), ours("P", flow)), margin));
    }

    /** The rows of a device: all of the cases, or of the step nearest to a flow. */
    private Group ours(String device, String flow) {
        var own = rows.stream().filter(r -> r.device.equals(device)).toList();
        if (clinical) {
            return Group.of(own.stream().mapToDouble(Row::drop).toArray());
        }
        var steps = own.stream().map(Row::flow).distinct().sorted().toList();
        double wanted = flow.equals("not reported") ? steps.get(steps.size() / 2) : quantity(flow);
        double step = steps.stream()
                .min(Comparator.comparing(s -> Math.abs(s - wanted)))
                .orElseThrow();
        return Group.of(
                own.stream().filter(r -> r.flow == step).mapToDouble(Row::drop).toArray());
    }

    private JsonNode yaml(String file) throws IOException {
        return YAML.readTree(Files.readString(library.resolve(file)));
    }

    private static double mmHg(JsonNode printed) {
        return quantity(printed.asText()) * (printed.asText().endsWith("kPa") ? MMHG_IN_KPA : 1);
    }

    private static double quantity(String printed) {
        return Double.parseDouble(printed.split(" ", -1)[0]);
    }
}
