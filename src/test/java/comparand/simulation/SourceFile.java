package comparand.simulation;

import java.util.List;

/** Writes one source, as a person would after reading it. */
record SourceFile(World world, String name, List<Published> values) {

    String text() {
        var first = values.get(0);
        boolean bench = !world.clinical() || first.at().water();
        boolean stated = !first.print().tellsSpread() && first.print() != Print.WITHOUT_NUMBER;
        boolean instructions = bench && stated;
        var kind = instructions ? "instructions-for-use" : bench ? "bench-paper" : "clinical-paper";
        var text = new StringBuilder("""
                source: %s
                kind: %s
                reference:
                  type: article-journal
                  title: "An invented source of invented values"
                  author: [{family: Example, given: A.}]
                  issued: 2024
                  container-title: Invented Journal
                  DOI: 10.5555/%s
                funding: independent
                status: {state: current, checked: 2026-11-01}
                %sconditions:
                  test-model: %s
                  haemoglobin: %s
                  temperature: %s °C
                values:
                """.formatted(
                        name,
                        kind,
                        name,
                        instructions ? "document: {revision: A, date: 2024-02}\n" : "",
                        first.at().water() ? "bench-water" : bench ? "bench-blood-animal" : "clinical",
                        first.silence() == Silence.HAEMOGLOBIN
                                ? "not reported"
                                : first.at().haemoglobin() + " g/dL",
                        first.at().temperature()));
        values.forEach(v -> text.append(value(v)));
        return text.toString();
    }

    private static String value(Published v) {
        return """
                  - id: %s
                    device: own
                    metric: pressure-drop
                    printed: "%s"
                    %s
                    definition: {parts: %s}
                    conditions: {blood-flow: %s}
                    place: {page: 6, table: 2, row: 4}
                    quote: "Own | %s"
                    read: [{by: XY, on: 2026-10-05}, {by: YZ, on: 2026-10-06, agrees: yes}]
                """.formatted(
                        v.id(),
                        v.form().printed(),
                        String.join("\n    ", v.form().record()),
                        v.silence() == Silence.PARTS
                                ? "not reported"
                                : v.at().filter() ? "[oxygenator, exchanger, filter]" : "[oxygenator, exchanger]",
                        v.silence() == Silence.FLOW ? "not reported" : v.at().flow() + " L/min",
                        v.form().printed());
    }
}
