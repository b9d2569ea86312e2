package comparand.normalise;

import comparand.diag.Located;
import comparand.model.Checked;
import comparand.model.Comparand;
import comparand.model.Label;
import comparand.model.Library.PublishedValue;
import comparand.model.SetAside.Reason;
import comparand.model.Summary;
import comparand.model.library.HowKnown;
import comparand.model.library.ScenarioRecord;
import comparand.model.library.StatusRecord;
import java.util.List;
import java.util.Optional;

/** Which published values take no part, and why. */
final class SettingAside {

    private SettingAside() {}

    /** A reason with what completes it. */
    record Why(Reason reason, String detail) {}

    static Optional<Why> why(Checked checked, PublishedValue value, Comparand comparand) {
        var source = value.source();
        var status = source.status();
        var byStatus = switch (status.state().value()) {
            case RETRACTED -> Optional.of(new Why(Reason.RETRACTED, notice(status)));
            // instructions hold for the devices of their revision, whatever came after them
            case SUPERSEDED ->
                isOfUnitsAtHand(checked, value)
                        ? Optional.<Why>empty()
                        : Optional.of(new Why(Reason.SUPERSEDED, successor(status)));
            case PREPRINT -> Optional.of(new Why(Reason.PREPRINT, successor(status)));
            case CURRENT, CORRECTED, CONCERN -> Optional.<Why>empty();
        };
        return byStatus.or(() -> source.sameStudyAs().map(other -> new Why(Reason.SAME_STUDY, other.value())))
                .or(() -> checked.dossier().leaveOut().stream()
                        .filter(l -> l.what().value().equals(source.id())
                                || l.what().value().equals(value.id()))
                        .findFirst()
                        .map(l -> new Why(Reason.LEFT_OUT, l.reason().value())))
                .or(() -> checked.scenario()
                        .filter(s -> isLeftOut(s, value, comparand))
                        .map(s -> new Why(Reason.LEFT_OUT, s.because().value())))
                .or(() -> Optional.ofNullable(checked.held().get(value.id()))
                        .map(message -> new Why(Reason.HELD, message)));
    }

    private static boolean isOfUnitsAtHand(Checked checked, PublishedValue value) {
        return checked.library()
                .device(value.value().device().value())
                .filter(d -> d.instructions().value().equals(value.source().id()))
                .isPresent();
    }

    private static boolean isLeftOut(ScenarioRecord scenario, PublishedValue value, Comparand comparand) {
        return scenario.leaveOut().stream()
                        .map(Located::value)
                        .anyMatch(w -> w.equals(value.source().id()) || w.equals(value.id()))
                || holds(scenario.leaveOutKinds(), value.source().kind().value())
                || holds(scenario.leaveOutFunding(), value.source().funding().value())
                || known(comparand.summary())
                        .filter(how -> holds(scenario.leaveOutValues(), how))
                        .isPresent();
    }

    private static <T> boolean holds(List<Located<T>> list, T value) {
        return list.stream().anyMatch(l -> l.value().equals(value));
    }

    /** How a value is known, where it is weaker than print. */
    private static Optional<HowKnown> known(Summary summary) {
        if (summary instanceof Summary.Sampled s) {
            return s.label() == Label.ESTIMATED
                    ? Optional.of(HowKnown.ESTIMATED)
                    : s.label() == Label.DIGITISED ? Optional.of(HowKnown.DIGITISED) : Optional.empty();
        }
        if (summary instanceof Summary.Point p) {
            return switch (p.kind()) {
                case ABOUT -> Optional.of(HowKnown.APPROXIMATE);
                case READ_FROM_FIGURE -> Optional.of(HowKnown.DIGITISED);
                case FIGURE, INCOMPLETE, MEDIAN, INTERPOLATED, NOMINAL, SINGLE -> Optional.empty();
            };
        }
        return Optional.empty();
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
