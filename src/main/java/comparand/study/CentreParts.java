package comparand.study;

import comparand.diag.Diagnostic;
import comparand.model.Comparand;
import comparand.model.LocalMember;
import comparand.model.LocalSeries;
import comparand.model.library.StudyKind;
import java.util.List;

/**
 * The results of each centre by itself, where a series comes from several. Of patients, groups too small to hide one among
 * them are not shown by themselves.
 */
final class CentreParts {

    private CentreParts() {}

    static List<Comparand> of(LocalSeries series, int smallestGroup, List<Diagnostic> findings) {
        var centres = series.centres();
        if (centres.size() < 2) {
            return List.of();
        }
        boolean guarded = series.study().kind().value() == StudyKind.CLINICAL;
        var small = centres.stream()
                .filter(c -> guarded && members(series, c) < smallestGroup)
                .toList();
        if (!small.isEmpty()) {
            findings.add(Diagnostic.note(
                    "small-group",
                    series.study().study().span(),
                    "`%s` of %s is not shown for %s by itself: fewer than %d %s"
                            .formatted(
                                    series.metric().id(),
                                    series.device(),
                                    String.join(", ", small),
                                    smallestGroup,
                                    series.level().plural()),
                    "a small group may tell who was in it",
                    "nothing to mend; the limit is `smallest-group:` of the dossier"));
        }
        return centres.stream()
                .filter(c -> !small.contains(c))
                .map(series::ofCentre)
                .toList();
    }

    private static int members(LocalSeries series, String centre) {
        return (int) series.members().stream()
                .map(LocalMember::centre)
                .filter(centre::equals)
                .count();
    }
}
