package comparand.normalise;

import comparand.diag.Located;
import comparand.model.Checked;
import comparand.model.Library.PublishedValue;
import comparand.model.SetAside;
import comparand.model.SetAside.Reason;
import comparand.model.library.StatusRecord;
import java.util.Optional;

/** Which published values take no part, and why. */
final class SettingAside {

    private SettingAside() {}

    static Optional<SetAside> reason(Checked checked, PublishedValue value) {
        var source = value.source();
        var status = source.status();
        var byStatus = switch (status.state().value()) {
            case RETRACTED -> Optional.of(new SetAside(value, Reason.RETRACTED, notice(status)));
            case SUPERSEDED -> Optional.of(new SetAside(value, Reason.SUPERSEDED, successor(status)));
            case PREPRINT -> Optional.of(new SetAside(value, Reason.PREPRINT, successor(status)));
            case CURRENT, CORRECTED, CONCERN -> Optional.<SetAside>empty();
        };
        return byStatus.or(
                        () -> source.sameStudyAs().map(other -> new SetAside(value, Reason.SAME_STUDY, other.value())))
                .or(() -> checked.dossier().leaveOut().stream()
                        .filter(l -> l.what().value().equals(source.id())
                                || l.what().value().equals(value.id()))
                        .findFirst()
                        .map(l ->
                                new SetAside(value, Reason.LEFT_OUT, l.reason().value())))
                .or(() -> Optional.ofNullable(checked.held().get(value.id()))
                        .map(message -> new SetAside(value, Reason.HELD, message)));
    }

    private static String notice(StatusRecord status) {
        return status.notice()
                .map(Located::value)
                .orElseGet(() -> status.since().map(d -> d.value().text()).orElse(""));
    }

    private static String successor(StatusRecord status) {
        return status.by().map(Located::value).orElse("");
    }
}
