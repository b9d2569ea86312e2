package comparand.normalise;

import comparand.diag.Located;
import comparand.model.Checked;
import comparand.model.Library.PublishedValue;
import comparand.model.SetAside.Reason;
import comparand.model.library.StatusRecord;
import java.util.Optional;

/** Which published values take no part, and why. */
final class SettingAside {

    private SettingAside() {}

    /** A reason with what completes it. */
    record Why(Reason reason, String detail) {}

    static Optional<Why> why(Checked checked, PublishedValue value) {
        var source = value.source();
        var status = source.status();
        var byStatus = switch (status.state().value()) {
            case RETRACTED -> Optional.of(new Why(Reason.RETRACTED, notice(status)));
            case SUPERSEDED -> Optional.of(new Why(Reason.SUPERSEDED, successor(status)));
            case PREPRINT -> Optional.of(new Why(Reason.PREPRINT, successor(status)));
            case CURRENT, CORRECTED, CONCERN -> Optional.<Why>empty();
        };
        return byStatus.or(() -> source.sameStudyAs().map(other -> new Why(Reason.SAME_STUDY, other.value())))
                .or(() -> checked.dossier().leaveOut().stream()
                        .filter(l -> l.what().value().equals(source.id())
                                || l.what().value().equals(value.id()))
                        .findFirst()
                        .map(l -> new Why(Reason.LEFT_OUT, l.reason().value())))
                .or(() -> Optional.ofNullable(checked.held().get(value.id()))
                        .map(message -> new Why(Reason.HELD, message)));
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
