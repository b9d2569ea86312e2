package comparand.check;

import comparand.diag.Located;
import comparand.model.library.LeaveOutRecord;
import java.util.HashSet;
import java.util.List;

/**
 * What it checks: a device, study, source or value that one list of a dossier names twice; a metric or a step that a
 * study file names twice.
 *
 * <p>Why it matters: its results would stand in the report twice, and count twice.
 *
 * <p>What to write instead: each name once.
 */
final class NamedTwice implements Rule {

    @Override
    public String code() {
        return "named-twice";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            names(dossier.devices(), findings);
            names(dossier.studies(), findings);
            names(dossier.sources(), findings);
            names(dossier.leaveOut().stream().map(LeaveOutRecord::what).toList(), findings);
        }
        context.library().studies().values().stream()
                .flatMap(s -> s.files().stream())
                .forEach(file -> {
                    names(file.gives(), findings);
                    names(file.groupedBy(), findings);
                });
    }

    private static void names(List<Located<String>> names, Findings findings) {
        var seen = new HashSet<String>();
        names.stream()
                .filter(n -> !seen.add(n.value()))
                .forEach(n -> findings.stop(
                        n.span(),
                        "`%s` stands in this list already".formatted(n.value()),
                        "its results would stand in the report twice, and count twice",
                        "take one of the two out"));
    }
}
