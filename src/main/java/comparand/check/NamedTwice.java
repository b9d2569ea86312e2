package comparand.check;

import comparand.diag.Located;
import comparand.model.library.LeaveOutRecord;
import comparand.model.library.PartRecord;
import comparand.model.library.ScenarioRecord;
import comparand.model.library.ScreenedRecord;
import comparand.model.library.SearchRecord;
import comparand.model.library.WeightRecord;
import java.util.HashSet;
import java.util.List;

/**
 * What it checks: a device, study, source or value that one list of a dossier names twice, or a tolerance, a cost or
 * a weight set twice; a metric or a step that a study file names twice; a part that a device names twice; a search or a record of a log of screening.
 *
 * <p>Why it matters: its results would stand in the report twice, and count twice; of two statements one would win in
 * silence.
 *
 * <p>What to write instead: each name once.
 */
final class NamedTwice implements Rule {

    private static final String COUNTED = "its results would stand in the report twice, and count twice";
    private static final String SILENT = "of two statements on one thing, one would win in silence";

    @Override
    public String code() {
        return "named-twice";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            names(dossier.devices(), COUNTED, findings);
            names(dossier.studies(), COUNTED, findings);
            names(dossier.sources(), COUNTED, findings);
            names(dossier.leaveOut().stream().map(LeaveOutRecord::what).toList(), SILENT, findings);
            var tolerances = dossier.tolerances().stream()
                    .map(t -> t.condition()
                            .map(c ->
                                    t.metric().map(m -> c + " for " + m.value()).orElse(c)))
                    .toList();
            names(tolerances, SILENT, findings);
            var costs = dossier.costs().stream()
                    .map(c -> c.item()
                            .map(i ->
                                    c.device().map(d -> i + " for " + d.value()).orElse(i)))
                    .toList();
            names(costs, "it would be paid for twice", findings);
            names(
                    dossier.weights().stream()
                            .flatMap(w -> w.of().stream())
                            .map(WeightRecord::metric)
                            .toList(),
                    SILENT,
                    findings);
            names(dossier.scenarios().stream().map(ScenarioRecord::suppose).toList(), SILENT, findings);
        }
        context.library().studies().values().stream()
                .flatMap(s -> s.files().stream())
                .forEach(file -> {
                    names(file.gives(), COUNTED, findings);
                    names(file.groupedBy(), SILENT, findings);
                });
        context.library().screenings().values().forEach(log -> {
            names(log.searches().stream().map(SearchRecord::id).toList(), SILENT, findings);
            names(log.records().stream().map(ScreenedRecord::id).toList(), SILENT, findings);
        });
        context.library()
                .devices()
                .values()
                .forEach(d -> names(d.parts().stream().map(PartRecord::part).toList(), SILENT, findings));
    }

    private static void names(List<Located<String>> names, String why, Findings findings) {
        var seen = new HashSet<String>();
        names.stream()
                .filter(n -> !seen.add(n.value()))
                .forEach(n -> findings.stop(
                        n.span(),
                        "`%s` stands in this list already".formatted(n.value()),
                        why,
                        "take one of the two out"));
    }
}
