package comparand.study;

import comparand.diag.Diagnostic;
import comparand.diag.Located;
import comparand.model.RowSource;
import comparand.model.UnreadableRows;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;

/** The rows of one raw file, from its cells to facts: left out by decision, put together where several make one. */
final class FileRows {

    private final DataFile file;
    private final Described described;
    private final FileLogDraft log;
    private final CellFaults faults;
    private final RowDecisions decisions;
    private final List<Diagnostic> findings = new ArrayList<>();

    FileRows(DataFile file, Described described, FileLogDraft log) {
        this.file = file;
        this.described = described;
        this.log = log;
        this.faults = new CellFaults(file.rows());
        this.decisions = new RowDecisions(file.mapping(), file.rows());
    }

    /**
     * Looks at the facts of every row that is not left out by its own file.
     *
     * @param look is given each row in its order, by a thread that reads ahead, and returns what is to be done about it, which is
     *     done here in the same order; it changes nothing that what is done also changes
     * @return what was found; what was done is of no use if any of it stops
     */
    List<Diagnostic> forEach(Function<RowFacts, Runnable> look) {
        try {
            if (file.columns().putsTogether()) {
                together().forEach(d -> d.facts().map(look).ifPresent(Runnable::run));
            } else {
                ReadAhead.run(hand -> file.rows().forEach(row -> {
                    var decision = decisions.leaveOut(row);
                    if (decision.isPresent()) {
                        hand.accept(leaveOut(row, decision.get()));
                    } else {
                        file.columns()
                                .whose(row, faults, file.centre())
                                .facts()
                                .map(look)
                                .ifPresent(hand);
                    }
                }));
            }
        } catch (UnreadableRows e) {
            findings.add(Diagnostic.stop(
                    "data-unreadable",
                    e.place(),
                    e.problem(),
                    "a file that cannot be read whole is not used at all",
                    e.fix()));
            return findings;
        }
        findings.addAll(faults.findings());
        findings.addAll(decisions.findings());
        return findings;
    }

    private List<RowDraft> together() {
        var drafts = new LinkedHashMap<String, RowDraft>();
        file.rows().forEach(row -> {
            var decision = decisions.leaveOut(row);
            if (decision.isPresent()) {
                leaveOut(row, decision.get()).run();
                return;
            }
            var draft = file.columns().whose(row, faults, file.centre());
            var key = draft.key();
            file.columns().measured(row, draft);
            var before = drafts.get(key);
            if (before == null) {
                drafts.put(key, draft);
            } else if (draft.isWhole() && before.contradiction(draft).isPresent()) {
                findings.add(
                        Diagnostic.stop(
                                "quantity-twice",
                                file.rows().row(row.line()),
                                "`%s` stands here a second time for one result, with another number"
                                        .formatted(before.contradiction(draft).get()),
                                "which of the two holds cannot be told",
                                "map the column that tells the two apart, such as `{holds: sample}`, or list one row under `dropped:`"));
            } else {
                before.merge(draft);
            }
        });
        return List.copyOf(drafts.values());
    }

    /** Leaves out a row and whom it describes; returns what to log. */
    private Runnable leaveOut(RowSource.Row row, RowDecisions.Decision decision) {
        var level = file.mapping().describes().map(Located::value).filter(l -> decision.ofMember());
        level.flatMap(l -> file.columns().member(row, Described.unit(l), file.centre()))
                .ifPresent(key -> described.leaveOut(level.orElseThrow(), key, decision.reason()));
        return () -> log.dropped(1, row.line(), decision.code(), decision.reason());
    }
}
