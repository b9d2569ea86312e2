package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.util.List;
import java.util.Optional;

/** The spread a source prints beside a mean or median. */
public record SpreadRecord(
        @Meaning("sd, se, ci95, iqr, range, not stated (printed without saying which) or not reported")
        Located<SpreadKind> kind,

        @Meaning("The figure, or the two ends as a list") Optional<OneOrMore<Located<Printed>>> of) {

    public List<Located<Printed>> figures() {
        return of.map(OneOrMore::list).orElse(List.of());
    }

    /** The figures as written: {@code 3.8 mmHg}, or {@code 52 mmHg to 74 mmHg}. */
    public String text() {
        return String.join(
                " to ", figures().stream().map(f -> f.value().toString()).toList());
    }
}
