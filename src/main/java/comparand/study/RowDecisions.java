package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.RowSource;
import comparand.model.library.DataFileRecord;
import comparand.model.library.DropRuleRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The rows of a raw file that its mapping leaves out, each by a recorded decision with a reason. */
final class RowDecisions {

    private final DataFileRecord mapping;
    private final RowSource rows;
    private final DroppedLines lines;
    private final DuplicateRows duplicates;
    private final Map<DropRuleRecord, Rule> rules = new LinkedHashMap<>();

    /** A rule with the column it looks at; its words are compared letter by letter. */
    private static final class Rule {
        private final int column;
        private final Set<String> words;
        private int rows;

        Rule(int column, Set<String> words) {
            this.column = column;
            this.words = words;
        }
    }

    RowDecisions(DataFileRecord mapping, RowSource rows) {
        this.mapping = mapping;
        this.rows = rows;
        this.lines = new DroppedLines(mapping);
        this.duplicates = new DuplicateRows(mapping, rows);
        mapping.dropWhen()
                .forEach(rule -> rules.put(
                        rule,
                        new Rule(
                                rows.header().indexOf(rule.column().value()),
                                rule.is().list().stream()
                                        .map(Located::value)
                                        .collect(Collectors.toCollection(HashSet::new)))));
    }

    /**
     * Why a row is left out.
     *
     * @param code of the kind of decision
     * @param ofMember whether it speaks of the whole unit or case, so that the rows of other files about it go too
     */
    record Decision(String code, String reason, boolean ofMember) {}

    /** Whether a row is left out: by its line, by a rule, or because it stands there a second time. */
    Optional<Decision> leaveOut(RowSource.Row row) {
        var out = lines.drop(row.line()).map(reason -> new Decision("dropped-line", reason, true));
        for (var entry : rules.entrySet()) {
            var rule = entry.getValue();
            if (rule.column >= 0
                    && rule.column < row.cells().size()
                    && rule.words.contains(row.cells().get(rule.column).text())) {
                rule.rows++;
                out = out.or(() -> Optional.of(
                        new Decision("dropped-by-rule", entry.getKey().reason().value(), true)));
            }
        }
        return out.or(() -> duplicates.isSecond(row)
                ? Optional.of(new Decision(
                        "row-twice",
                        mapping.duplicates().map(d -> d.reason().value()).orElse(""),
                        false))
                : Optional.empty());
    }

    /** After the last row. */
    List<Diagnostic> findings() {
        var findings = new ArrayList<>(lines.findings());
        rules.forEach((record, rule) -> {
            if (rule.column < 0) {
                findings.add(Diagnostic.stop(
                        "column-missing",
                        record.column().span(),
                        "`%s` has no column `%s`"
                                .formatted(rows.file(), record.column().value()),
                        "the rows that were to be left out are counted",
                        Suggest.instruction(record.column().value(), rows.header())));
            } else if (rule.rows == 0) {
                findings.add(Diagnostic.note(
                        "drop-rule-unmet",
                        record.is().list().get(0).span(),
                        "no row of `%s` has `%s` in the column `%s`"
                                .formatted(
                                        mapping.name(),
                                        record.is().list().get(0).value(),
                                        record.column().value()),
                        "the rows that were to be left out may be written otherwise",
                        "check how the file writes it, or take the rule out"));
            }
        });
        findings.addAll(duplicates.findings());
        return findings;
    }
}
