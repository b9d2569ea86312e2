package comparand.support;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.databind.JsonNode;
import comparand.support.BookRows.BookCell;
import comparand.support.BookRows.BookRow;
import comparand.support.TaggedPdf.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Every text of the documents of a run, each with the part of results.json its numbers must come from. */
public final class PrintedPlaces {

    /** Sections and sheets that are drawn from one part of the results. */
    private static final Map<String, List<String>> PARTS = Map.ofEntries(
            Map.entry("What can be said", List.of("pairs", "comparands", "questions", "devices")),
            Map.entry("What the documents state of each device", List.of("devices", "comparands")),
            Map.entry("Where published values come from", List.of("sources")),
            Map.entry("What became of every record that was found, with reasons", List.of("screening")),
            Map.entry("Flow of records", List.of("screening")),
            Map.entry("Searches", List.of("screening")),
            Map.entry("Screening", List.of("screening")),
            Map.entry("Published values that take no part, with reasons", List.of("set-aside", "devices")),
            Map.entry("How far conditions may differ and still count as the same", List.of("questions")),
            Map.entry("Limitations found in the records", List.of("findings")),
            Map.entry("How to read this table", List.of()),
            Map.entry("Cautions", List.of("cautions")),
            Map.entry("Read first", List.of("run", "devices", "cautions", "weights")),
            Map.entry("Characteristics", List.of("devices", "comparands")),
            Map.entry("Questions", List.of("run", "questions")),
            Map.entry("Units and cases by hospital and device", List.of("row-log", "devices", "run")),
            Map.entry("What is not known", List.of()),
            Map.entry("Local data", List.of("row-log", "devices", "run")),
            Map.entry("Row log", List.of("row-log")),
            Map.entry("Tolerances", List.of("questions")),
            Map.entry("Sources", List.of("sources")),
            Map.entry("Costs", List.of("costs", "devices")),
            Map.entry("Cost of a case", List.of("costs", "devices")),
            Map.entry("Weights", List.of("weights", "questions", "devices", "comparands")),
            Map.entry("Weights varied", List.of("weights", "questions")),
            Map.entry("Changes", List.of("changes", "sources", "devices")),
            Map.entry("Set aside", List.of("set-aside", "devices")),
            Map.entry("Scenarios", List.of("scenarios", "sources", "devices")),
            Map.entry("What if", List.of("scenarios", "sources", "devices")),
            Map.entry("Findings", List.of("findings")));

    private final JsonNode results;

    private PrintedPlaces(JsonNode results) {
        this.results = results;
    }

    /**
     * A text of a document.
     *
     * @param where for a person
     * @param number what the cell of a sheet holds beside what it shows
     * @param kind frame, key, step, or empty for all others
     */
    public record Place(String where, String kind, String text, OptionalDouble number, TracedNumbers from) {}

    public static List<Place> of(Built built) {
        var places = new PrintedPlaces(built.results());
        return Stream.concat(
                        places.workbook(built.folder().resolve("evidence-workbook.xlsx")),
                        places.pdf(TaggedPdf.of(built.folder().resolve("evidence-table.pdf"))))
                .toList();
    }

    private Stream<Place> workbook(java.nio.file.Path file) {
        var frame = from(List.of("run", "devices"));
        var beside = BookRows.frame(file).stream()
                .map(t -> new Place("workbook, beside the tables", "frame", t, OptionalDouble.empty(), frame));
        var everything = with(List.of(results));
        var figures = BookRows.figures(file).stream()
                .map(t -> new Place("workbook, figures", "", t, OptionalDouble.empty(), everything));
        var rows = BookRows.tables(file).stream().flatMap(row -> {
            var from = row(row);
            return row.cells().stream().map(cell -> cell(row, cell, from));
        });
        return Stream.concat(Stream.concat(beside, figures), rows);
    }

    private static Place cell(BookRow row, BookCell cell, TracedNumbers from) {
        var where = "%s, line %d, %s".formatted(row.sheet(), row.line(), cell.heading());
        var kind = row.table().equals("Key")
                ? "key"
                : row.table().equals("Trail") && cell.heading().equals("Step") ? "step" : "";
        return new Place(where, kind, cell.shown(), cell.number(), from);
    }

    /** Rows that name their values must find every number there; the others in their metric or part. */
    private TracedNumbers row(BookRow row) {
        var id = row.text("Id");
        var other = row.text("Other id");
        if (row.sheet().equals("Unknowns")) {
            return with(all("unknowns").filter(u -> text(u, "id").equals(id)).toList());
        }
        if (!id.isEmpty() && !Set.of("Set aside", "Scenarios").contains(row.sheet())) {
            var nodes = new ArrayList<JsonNode>();
            var values = Set.copyOf(List.of(id, other));
            all("comparands").filter(c -> values.contains(text(c, "id"))).forEach(nodes::add);
            all("pairs")
                    .filter(p -> text(p, "ours").equals(id) && text(p, "theirs").equals(other))
                    .forEach(nodes::add);
            all("together").filter(t -> text(t, "ours").equals(id)).forEach(nodes::add);
            var metric = nodes.isEmpty() ? "" : text(nodes.get(0), "metric");
            all("questions").filter(q -> text(q, "metric").equals(metric)).forEach(nodes::add);
            return with(nodes);
        }
        if (row.sheet().equals("Row log")) {
            return with(logged("files")
                    .filter(f -> text(f, "file").equals(row.text("File")))
                    .toList());
        }
        if (row.sheet().equals("Local data")) {
            var study = row.text("Study");
            return with(Stream.of("counts", "outside-label")
                    .flatMap(this::logged)
                    .filter(c -> text(c, "study").equals(study))
                    .filter(c -> !c.has("centre")
                            || text(c, "centre").equals(row.text("Hospital").replaceFirst("^NA$", "")))
                    .toList());
        }
        var metric = all("questions")
                .filter(q -> text(q, "name").equals(row.text("Metric")))
                .findFirst();
        return PARTS.containsKey(row.sheet()) || metric.isEmpty()
                ? from(requireNonNull(PARTS.getOrDefault(row.sheet(), List.of())))
                : metric(metric.get());
    }

    private Stream<Place> pdf(TaggedPdf pdf) {
        var frame = from(List.of("run", "devices"));
        var feet = pdf.artifacts().stream()
                .map(t -> new Place("PDF, head and foot", "foot", t, OptionalDouble.empty(), frame));
        var texts = pdf.elements().stream()
                .flatMap(document -> document.children().stream())
                .flatMap(this::section);
        return Stream.concat(feet, texts);
    }

    private Stream<Place> section(Element section) {
        var title = section.all("H1").stream().findFirst().map(Element::text).orElse("");
        var metric = all("questions")
                .filter(q -> title.toLowerCase(Locale.ROOT).startsWith(text(q, "name") + " ("))
                .findFirst();
        var from = metric.map(this::metric)
                .orElseGet(() -> from(requireNonNull(PARTS.getOrDefault(title, List.of("run", "devices")))));
        var kind = title.equals("How to read this table") ? "key" : title.isEmpty() ? "frame" : "";
        return placed(section, "PDF, " + title, kind, from, title.equals("What can be said") || metric.isPresent());
    }

    /** Texts with the part they come from: those of a row or point about one pair only from that pair. */
    private Stream<Place> placed(Element element, String where, String kind, TracedNumbers from, boolean byPair) {
        if (where.endsWith("What is not known") && element.type().equals("TR")) {
            var unknown = with(unknownIn(element.text()));
            return element.all().map(e -> new Place(where, kind, e.text(), OptionalDouble.empty(), unknown));
        }
        boolean ofPair =
                byPair && (element.type().equals("TR") || element.type().equals("P"));
        var own = ofPair ? pairIn(element.text()).orElse(from) : from;
        return element.children().isEmpty()
                ? Stream.of(new Place(where, kind, element.text(), OptionalDouble.empty(), own))
                : element.children().stream().flatMap(c -> placed(c, where, kind, own, byPair && !ofPair));
    }

    /** What is said of one pair may name the numbers of that pair only; counts of events stand in no pair. */
    private Optional<TracedNumbers> pairIn(String text) {
        var plain = NumberTokens.plain(text).toLowerCase(Locale.ROOT);
        var nodes = new ArrayList<JsonNode>();
        all("pairs")
                .filter(p -> plain.contains(
                        NumberTokens.plain(p.get("answer").get("sentence").asText())
                                .toLowerCase(Locale.ROOT)))
                .filter(p -> p.get("answer").has("difference"))
                .filter(p -> plain.contains(NumberTokens.plain(
                        text(p.get("answer").get("difference"), "shown").replaceFirst(" .*", ""))))
                .forEach(p -> {
                    nodes.add(p);
                    all("comparands")
                            .filter(c -> text(c, "id").equals(text(p, "ours"))
                                    || text(c, "id").equals(text(p, "theirs")))
                            .forEach(nodes::add);
                    all("questions")
                            .filter(q -> text(q, "metric").equals(text(p, "metric")))
                            .forEach(nodes::add);
                    all("devices").forEach(d -> nodes.add(d.get("name")));
                    nodes.add(results.get("run").get("family-size"));
                });
        return nodes.isEmpty() ? Optional.empty() : Optional.of(with(nodes));
    }

    /** The row of an unknown holds what is said of that one, and of no other. */
    private List<JsonNode> unknownIn(String row) {
        var plain = NumberTokens.plain(row).replaceAll("\\s+", "");
        return all("unknowns")
                .filter(u -> plain.contains(NumberTokens.plain(text(u, "what")).replaceAll("\\s+", "")))
                .filter(u ->
                        plain.contains(NumberTokens.plain(text(u, "device")).replaceAll("\\s+", "")))
                .toList();
    }

    private TracedNumbers metric(JsonNode question) {
        var id = text(question, "metric");
        var nodes = new ArrayList<JsonNode>(List.of(question));
        var pairs = all("pairs").filter(n -> text(n, "metric").equals(id)).toList();
        nodes.addAll(pairs);
        all("together").filter(t -> text(t, "metric").equals(id)).forEach(nodes::add);
        // a pair may set a value of another quantity beside ours
        all("comparands")
                .filter(n -> text(n, "metric").equals(id)
                        || pairs.stream().anyMatch(p -> text(p, "theirs").equals(text(n, "id"))))
                .forEach(nodes::add);
        return with(nodes);
    }

    private Stream<JsonNode> logged(String part) {
        return Built.all(results.get("row-log").get(part)).stream();
    }

    private TracedNumbers from(List<String> parts) {
        return with(parts.stream().filter(results::has).map(results::get).toList());
    }

    /** The level of intervals and the number of comparisons may be named anywhere. */
    private TracedNumbers with(List<JsonNode> nodes) {
        var all = new ArrayList<>(nodes);
        all.add(results.get("run").get("level"));
        all.add(results.get("run").get("family-size"));
        return new TracedNumbers(all);
    }

    private Stream<JsonNode> all(String part) {
        return Built.all(results.get(part)).stream();
    }

    private static String text(JsonNode node, String key) {
        return Optional.ofNullable(node.get(key)).map(JsonNode::asText).orElse("");
    }
}
