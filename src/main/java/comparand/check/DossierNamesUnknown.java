package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.LeaveOutRecord;
import comparand.model.library.QuestionRecord;
import comparand.model.library.WeightRecord;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * What it checks: a dossier that names a device, study, source, value, log of screening or metric the library does not hold.
 *
 * <p>Why it matters: a misspelt name would quietly leave something out of the report.
 *
 * <p>What to write instead: the name of a record in the library.
 */
final class DossierNamesUnknown implements Rule {

    @Override
    public String code() {
        return "dossier-names-unknown";
    }

    @Override
    public void check(Context context, Findings findings) {
        var library = context.library();
        var sourcesAndValues = new TreeSet<>(library.sources().keySet());
        context.values().forEach(v -> sourcesAndValues.add(v.id()));
        for (var dossier : context.dossiers()) {
            names(dossier.devices(), library.devices().keySet(), "device", findings);
            names(List.of(dossier.presentDevice()), library.devices().keySet(), "device", findings);
            names(
                    dossier.unknowns().stream()
                            .flatMap(u -> u.device().stream())
                            .toList(),
                    library.devices().keySet(),
                    "device",
                    findings);
            names(
                    dossier.costs().stream().flatMap(c -> c.device().stream()).toList(),
                    dossier.devices().stream().map(Located::value).toList(),
                    "device of this dossier",
                    findings);
            names(
                    dossier.weights().stream()
                            .flatMap(w -> w.of().stream())
                            .map(WeightRecord::metric)
                            .toList(),
                    dossier.questions().stream().map(q -> q.metric().value()).toList(),
                    "question on",
                    findings);
            names(dossier.studies(), library.studies().keySet(), "study", findings);
            names(dossier.sources(), library.sources().keySet(), "source", findings);
            names(dossier.screening().stream().toList(), library.screenings().keySet(), "log of screening", findings);
            names(
                    dossier.questions().stream().map(QuestionRecord::metric).toList(),
                    library.catalogue().ids(),
                    "metric",
                    findings);
            names(
                    dossier.leaveOut().stream().map(LeaveOutRecord::what).toList(),
                    sourcesAndValues,
                    "source or value",
                    findings);
            names(
                    dossier.scenarios().stream()
                            .flatMap(s -> s.leaveOut().stream())
                            .toList(),
                    sourcesAndValues,
                    "source or value",
                    findings);
            names(
                    dossier.primary().stream().toList(),
                    dossier.questions().stream().map(q -> q.metric().value()).toList(),
                    "question on",
                    findings);
        }
    }

    private static void names(List<Located<String>> names, Collection<String> known, String what, Findings findings) {
        names.stream()
                .filter(n -> !known.contains(n.value()))
                .forEach(n -> findings.stop(
                        n.span(),
                        "there is no %s `%s`".formatted(what, n.value()),
                        "a misspelt name would quietly leave it out of the report",
                        Suggest.instruction(n.value(), known)));
    }
}
