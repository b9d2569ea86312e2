package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Severity;
import comparand.study.quality.Effect;
import comparand.study.quality.QualityFinding;
import comparand.study.quality.QualityRule;
import comparand.study.quality.QualityRules;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks at each row of one file by every rule, logs what is found, and tells it once per rule at the end. */
final class QualityOfRows {

    /** What one rule found, by what it does to the file's reader: rows held, or rows pointed out. */
    private static final class Found {
        private final Lines lines = new Lines();
        private String message = "";

        void add(int line, String text) {
            if (lines.count() == 0 || line < lines.first()) {
                message = text;
            }
            lines.add(line);
        }
    }

    /** What a rule says of the row that is being looked at. */
    record Said(QualityRule rule, QualityFinding finding) {
        boolean holds() {
            return finding.effect() instanceof Effect.Hold;
        }
    }

    private final DataFile file;
    private final Collection<MetricOfStudy> metrics;
    private final FileFormulas formulas;
    private final MissingCells missing;
    private final List<QualityRule> rules;
    private final List<QualityRule> looking;
    private final Map<QualityRule, Map<Severity, Found>> found = new LinkedHashMap<>();

    /**
     * No row yet.
     *
     * @param metrics those that the study's files are asked for
     */
    QualityOfRows(DataFile file, Collection<MetricOfStudy> metrics) {
        this.file = file;
        this.metrics = metrics;
        this.formulas = new FileFormulas(file);
        this.missing = new MissingCells(file);
        this.rules = QualityRules.forFile(new FileLimits(file.mapping()));
        this.looking = new ArrayList<>(rules);
    }

    /** Logs what was found in a row; one that is held is logged as such. */
    Admitted admit(RowFacts own, List<Said> said, FileLogDraft log) {
        if (said.isEmpty()) {
            return Admitted.WHOLLY;
        }
        said.forEach(s -> note(s.rule, s.holds() ? Severity.HOLD : Severity.NOTE, own.line(), s.finding.message()));
        var holding = said.stream().filter(Said::holds).toList();
        if (!holding.isEmpty()) {
            var reason = String.join(
                    "; ", holding.stream().map(s -> s.finding.message()).toList());
            log.held(own.rows(), own.line(), holding.get(0).rule.code(), reason);
            return new Admitted(Optional.of(reason), List.of());
        }
        said.forEach(s -> log.remarked(own.line(), s.rule.code(), s.finding.message()));
        return new Admitted(
                Optional.empty(), said.stream().map(s -> s.finding.effect()).toList());
    }

    /** Logs what is empty in a row that takes part, and what cannot be computed for lack of it. */
    void lacks(RowFacts row, Collection<String> metricsWithoutValue, FileLogDraft log) {
        missing.remark(row, metricsWithoutValue).ifPresent(text -> log.remarked(row.line(), "value-missing", text));
    }

    /**
     * What the rules say of a row. They remember rows before it, so they are to see all in their order.
     *
     * @param own what stands in the row itself
     * @param joined with what other files say of it
     */
    List<Said> look(RowFacts own, RowFacts joined) {
        var row = new LookedAt(formulas, own, joined);
        var said = new ArrayList<Said>();
        for (var each = looking.iterator(); each.hasNext(); ) {
            var rule = each.next();
            row.untouched();
            var finding = rule.look(row);
            if (finding.isEmpty() && !row.askedOfRow()) {
                // the file lacks what the rule is about, so it need not look at the rows to come
                each.remove();
            }
            finding
                    // what only the description of the case gives rise to is said once, of the row that describes it
                    .filter(f -> row.touchedOwn() || !(f.effect() instanceof Effect.Remark))
                    .filter(f -> isWorthAWord(f.effect()))
                    .ifPresent(f -> said.add(new Said(rule, f)));
        }
        return said;
    }

    private boolean isWorthAWord(Effect effect) {
        return !(effect instanceof Effect.Exclude some)
                || some.isFault()
                || metrics.stream().anyMatch(m -> Admitted.excludes(effect, m, file));
    }

    private void note(QualityRule rule, Severity severity, int line, String message) {
        found.computeIfAbsent(rule, r -> new EnumMap<>(Severity.class))
                .computeIfAbsent(severity, s -> new Found())
                .add(line, message);
    }

    /** After the last row: what the rows show together, and one finding per rule. */
    List<Diagnostic> findings(FileLogDraft log) {
        for (var rule : rules) {
            rule.together().forEach((line, message) -> {
                log.remarked(line, rule.code(), message);
                note(rule, Severity.NOTE, line, message);
            });
        }
        var findings = new ArrayList<Diagnostic>();
        found.forEach((rule, bySeverity) -> bySeverity.forEach((severity, f) -> findings.add(new Diagnostic(
                severity,
                rule.code(),
                file.rows().row(f.lines.first()),
                f.lines.count() == 1
                        ? f.message
                        : "%s; %d rows are such, %s".formatted(f.message, f.lines.count(), f.lines),
                rule.why(),
                rule.fix()))));
        findings.sort(Diagnostic.ORDER);
        return findings;
    }
}
