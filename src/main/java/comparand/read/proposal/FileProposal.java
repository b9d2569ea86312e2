package comparand.read.proposal;

import comparand.metric.Catalogue;
import comparand.model.library.ColumnRole;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The proposed mapping of one table. */
final class FileProposal {

    private final RawTable table;
    private final Map<String, ColumnFacts> facts = new LinkedHashMap<>();
    private final List<ColumnProposal> columns = new ArrayList<>();
    private final List<String> metrics;
    private int rows;

    FileProposal(RawTable table, Catalogue catalogue) {
        this.table = table;
        var header = table.rows().header();
        header.forEach(h -> facts.put(h, new ColumnFacts()));
        var each = List.copyOf(facts.values());
        table.rows().forEach(row -> {
            rows++;
            for (int i = 0; i < Math.min(each.size(), row.cells().size()); i++) {
                each.get(i).see(row.cells().get(i));
            }
        });
        var proposals = new ColumnProposals(catalogue);
        facts.forEach((heading, seen) -> columns.add(proposals.of(heading, seen)));
        metrics = proposals.computable();
    }

    boolean holds(ColumnRole role) {
        return columns.stream().anyMatch(c -> c.role().filter(role::equals).isPresent());
    }

    /** The lines of the entry under {@code files:}, indented. */
    List<String> lines() {
        var lines = new ArrayList<String>();
        lines.add("  - file: " + YamlWords.quoted(table.name()) + "  # " + rows + " rows");
        table.form().forEach(l -> lines.add("    " + l));
        decimal(lines);
        missing(lines);
        lines.add("    repeats: refuse  # assumed: a unit or case tested twice at one step stops the run");
        if (!metrics.isEmpty()) {
            lines.add("    gives: [%s]  # CHECK: what the proposed columns suffice for"
                    .formatted(String.join(", ", metrics)));
        }
        var questions = questions();
        if (!questions.isEmpty()) {
            lines.add("    undecided:  # settle each, then delete its line");
            questions.forEach(q -> lines.add("      - " + YamlWords.quoted(q)));
        }
        lines.add("    columns:");
        columns.forEach(c -> lines.add("      " + c.line()));
        return lines;
    }

    private void decimal(List<String> lines) {
        int points = facts.values().stream().mapToInt(ColumnFacts::points).sum();
        int commas = facts.values().stream().mapToInt(ColumnFacts::commas).sum();
        int all = points + commas;
        if (table.workbook() && all == 0) {
            return;
        }
        var sign = commas > points ? "comma" : "point";
        var seen = all == 0
                ? "assumed: no number has a decimal sign"
                : "%d of %d numbers with a decimal sign have a %s".formatted(Math.max(points, commas), all, sign);
        lines.add("    decimal: " + sign + "  # " + seen);
    }

    private void missing(List<String> lines) {
        var codes = new LinkedHashMap<String, Integer>();
        numeric()
                .forEach((h, f) -> f.notNumbers().forEach((word, n) -> {
                    if (ColumnFacts.MISSING.contains(word)) {
                        codes.merge(word, n, Integer::sum);
                    }
                }));
        if (!codes.isEmpty()) {
            lines.add("    missing: [%s]  # among numbers %s"
                    .formatted(
                            codes.keySet().stream().map(YamlWords::quoted).collect(Collectors.joining(", ")),
                            codes.entrySet().stream()
                                    .map(e -> e.getValue() + " times " + YamlWords.comment(e.getKey()))
                                    .collect(Collectors.joining(", "))));
        }
    }

    private Map<String, ColumnFacts> numeric() {
        var numeric = new LinkedHashMap<String, ColumnFacts>();
        facts.forEach((h, f) -> {
            if (f.isNumeric()) {
                numeric.put(h, f);
            }
        });
        return numeric;
    }

    private List<String> questions() {
        var questions = new ArrayList<String>();
        table.hiddenIn().ifPresent(s -> questions.add("whether the hidden sheet `%s` is to be read".formatted(s)));
        if (!holds(ColumnRole.DEVICE)) {
            questions.add("which column names the device: write `{holds: device, codes: {...}}` behind it");
        }
        columns.forEach(c -> questions.addAll(c.questions()));
        long units =
                columns.stream().filter(c -> c.mapping().contains(", unit: ")).count();
        if (units > 0) {
            questions.add(
                    "whether the units read from %d headings are right: see the lines marked CHECK".formatted(units));
        }
        int ambiguous =
                facts.values().stream().mapToInt(ColumnFacts::maybeThousands).sum();
        if (ambiguous > 0) {
            questions.add(
                    "whether %d numbers such as 12,345 or 12.345 have decimals or thousands".formatted(ambiguous));
        }
        int points = facts.values().stream().mapToInt(ColumnFacts::points).sum();
        int commas = facts.values().stream().mapToInt(ColumnFacts::commas).sum();
        if (points > 0 && commas > 0) {
            questions.add("which decimal sign holds: %d numbers have a point and %d a comma".formatted(points, commas));
        }
        numeric()
                .forEach((heading, f) -> f.notNumbers().keySet().stream()
                        .filter(w -> !ColumnFacts.MISSING.contains(w))
                        .findFirst()
                        .ifPresent(w -> questions.add(
                                "what `%s` among the numbers of `%s` means: list it under `missing:`, or correct it"
                                        .formatted(YamlWords.comment(w), heading))));
        if (metrics.isEmpty()) {
            questions.add("which metrics it gives: add `gives: [...]`, or `describes: cases`, units or devices");
        }
        return questions;
    }
}
