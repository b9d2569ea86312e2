package comparand.check;

import comparand.diag.Suggest;
import comparand.model.library.SourceState;
import java.util.stream.Stream;

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
                        "its values are set aside in favour of another source, which readers want to see",
                        "add `by: NAME` with the source in this library that takes its place");
            }
            Stream.concat(status.by().stream(), source.sameStudyAs().stream())
                    .filter(other ->
                            !sources.contains(other.value()) || other.value().equals(source.id()))
                    .forEach(other -> findings.stop(
                            other.span(),
                            "there is no other source `%s`".formatted(other.value()),
                            "a report counted beside its own study doubles the study's weight",
                            Suggest.instruction(other.value(), sources)));
        }
    }
}
