package comparand.normalise;

import comparand.model.Comparand;
import comparand.model.LocalMember;
import comparand.model.LocalPart;
import comparand.model.LocalScope;
import comparand.model.LocalSeries;
import comparand.model.Step;
import comparand.normalise.LocalFooting.Wanted;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The local units or cases that lie within the tolerances of a published value's conditions. */
final class Selection {

    private Selection() {}

    /**
     * The chosen ones as a comparand; empty if nothing needs choosing, or fewer than {@code fewest} are left.
     *
     * @param wanted the conditions that all of them together do not meet
     */
    static Optional<Comparand> of(LocalSeries series, List<Wanted> wanted, int fewest) {
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        var chosen = series.members().stream()
                .filter(m -> wanted.stream().allMatch(w -> meets(series, m, w)))
                .toList();
        if (chosen.size() < fewest || chosen.size() == series.members().size()) {
            return Optional.empty();
        }
        var names = wanted.stream().map(w -> w.use().condition().name()).collect(Collectors.joining(", "));
        var amounts = wanted.stream()
                .map(w -> w.use().condition().name() + " " + w.text() + " "
                        + w.use().tolerance().words())
                .collect(Collectors.joining(", "));
        var step = Step.of(
                Step.Kind.SELECTED,
                "",
                "over",
                names,
                "at",
                amounts,
                "n",
                String.valueOf(chosen.size()),
                "of",
                String.valueOf(series.members().size()),
                "level",
                series.level().plural());
        var group =
                label(series, "chosen at " + wanted.stream().map(Wanted::text).collect(Collectors.joining(", ")));
        return Optional.of(series.of(
                chosen,
                group,
                new LocalScope(LocalPart.MATCHED, "", series.scope().steps()),
                List.of(step)));
    }

    private static boolean meets(LocalSeries series, LocalMember member, Wanted wanted) {
        return series.index(wanted.id())
                .map(member::amount)
                .filter(a -> a.isPresent() && wanted.isMetBy(a.getAsDouble()))
                .isPresent();
    }

    static String label(LocalSeries series, String what) {
        return series.label().isEmpty() ? what : series.label() + ", " + what;
    }
}
