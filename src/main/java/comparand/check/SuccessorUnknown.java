package comparand.check;

import comparand.diag.Located;
import comparand.diag.Suggest;
import comparand.model.library.SourceRecord;
import comparand.model.library.SourceState;
import java.util.Set;

/**
 * What it checks: a source that is superseded, a preprint, or a second report of one study, and does not name the
 * other source, or names one that is not there.
 *
 * <p>Why it matters: readers want to know what took its place, and a second report counted again doubles its weight.
 *
 * <p>What to write instead: {@code by:} or {@code same-study-as:} with the name of a file in sources/.
 */
final class SuccessorUnknown implements Rule {

    @Override
    public String code() {
        return "successor-unknown";
    }

    private static final String SUCCESSOR =
            "its values are set aside in favour of another source, which readers want to see";
    private static final String TWICE = "a report counted beside its own study doubles the study's weight";

    @Override
    public void check(Context library, Findings findings) {
        var sources = library.library().sources().keySet();
        for (var source : library.library().sources().values()) {
            var status = source.status();
            boolean needs = status.state().value() == SourceState.SUPERSEDED
                    || status.state().value() == SourceState.PREPRINT;
            if (needs && status.by().isEmpty()) {
                findings.stop(
                        status.state().span(),
                        "`%s` does not say which source takes its place".formatted(source.id()),
                        SUCCESSOR,
                        "add `by: NAME` with the source in this library that takes its place");
            }
            status.by().ifPresent(by -> other(source, by, sources, SUCCESSOR, findings));
            source.sameStudyAs().ifPresent(study -> other(source, study, sources, TWICE, findings));
        }
    }

    private static void other(
            SourceRecord source, Located<String> named, Set<String> sources, String why, Findings findings) {
        if (named.value().equals(source.id())) {
            findings.stop(named.span(), "`%s` names itself".formatted(source.id()), why, "name the other source");
        } else if (!sources.contains(named.value())) {
            findings.stop(
                    named.span(),
                    "there is no source `%s`".formatted(named.value()),
                    why,
                    Suggest.instruction(
                            named.value(),
                            sources.stream().filter(s -> !s.equals(source.id())).toList()));
        }
    }
}
