package comparand.compose.talk;

import comparand.compose.text.Cells;
import comparand.compose.text.ConditionLine;
import comparand.compose.text.Run;
import comparand.document.Block.Table;
import comparand.document.Cell;
import comparand.metric.Metric;
import comparand.metric.Role;
import comparand.model.Comparand;
import comparand.model.Comparison;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/** Tables of backup slides about pairs: all of a metric, the conditions of our side, the steps behind every number. */
final class PairTables {

    private final Run run;
    private final Cells cells;

    PairTables(Run run) {
        this.run = run;
        this.cells = new Cells(run);
    }

    /** Every pair of a metric with its answer; other quantities and unlike conditions in their brackets. */
    Table table(Metric metric, List<Comparison> comparisons) {
        var rows = new ArrayList<List<Cell>>();
        for (var c : comparisons) {
            var pairing = c.pairing();
            var group = Speeches.group(pairing.ours());
            var answer = ConditionLine.upperFirst(run.answers().of(c));
            rows.add(List.of(
                    Cell.words(run.names().brief(pairing.ours().device()) + group + "; "
                            + (pairing.theirs().isLocal()
                                    ? run.names().brief(pairing.theirs().device())
                                    : run.names().locator(pairing.theirs()))),
                    Cell.words(cells.brief(pairing.ours()) + "; "
                            + cells.briefBeside(pairing.theirs(), pairing.standing())),
                    cells.differenceInWords(c),
                    Cell.words(answer + ". "
                            + run.words().say("standing." + pairing.standing().name()))));
        }
        return new Table(
                "Pairs" + metric.id().replace("-", ""),
                ConditionLine.upperFirst(metric.name()),
                List.of(
                        cells.name("talk.col.row", 22),
                        cells.text("talk.col.pair", 22),
                        cells.text("talk.col.difference", 15),
                        cells.text("talk.col.verdict", 46)),
                rows.isEmpty() ? List.of(cells.nothing(4)) : rows,
                List.of());
    }

    /** The conditions that decide, of each of our results that was set beside something; results alike in one row. */
    Table conditions() {
        var byConditions = new LinkedHashMap<List<String>, List<String>>();
        for (var c : run.compared().comparisons()) {
            var ours = c.pairing().ours();
            if (ours.isLocal()) {
                var key = List.of(ours.metric().name(), conditions(ours));
                var who = run.names().brief(ours.device()) + Speeches.group(ours);
                var devices = byConditions.computeIfAbsent(key, k -> new ArrayList<>());
                if (!devices.contains(who)) {
                    devices.add(who);
                }
            }
        }
        var rows = new ArrayList<List<Cell>>();
        byConditions.forEach((key, devices) -> rows.add(List.of(
                Cell.words(ConditionLine.upperFirst(key.get(0))),
                Cell.words(String.join("; ", devices)),
                Cell.words(key.get(1).isEmpty() ? run.words().say("none") : key.get(1)))));
        return new Table(
                "Conditions",
                run.words().say("talk.title.conditions"),
                List.of(cells.name("col.metric", 22), cells.text("col.device", 28), cells.text("col.conditions", 52)),
                rows.isEmpty() ? List.of(cells.nothing(3)) : rows,
                List.of());
    }

    private static String conditions(Comparand c) {
        return String.join(
                ", ",
                c.metric().conditions().stream()
                        .filter(u -> u.role() != Role.QUALIFIES)
                        .map(u -> u.condition().name() + " "
                                + c.condition(u.condition().id()).text())
                        .toList());
    }

    /** The steps from print, with the quote, or from raw data. */
    Table trail(Metric metric, List<Comparand> values) {
        var rows = values.stream()
                .map(c -> List.<Cell>of(
                        Cell.words(run.names().brief(c.device()) + "; "
                                + run.names().locator(c)),
                        Cell.words(run.summaries().withUnit(c)),
                        Cell.words(String.join(". ", run.trails().of(c)))))
                .toList();
        return new Table(
                "Trail" + metric.id().replace("-", ""),
                ConditionLine.upperFirst(metric.name()),
                List.of(
                        cells.name("col.device", 20),
                        cells.text("talk.col.value", 16),
                        cells.text("talk.col.steps", 66)),
                rows,
                List.of());
    }
}
