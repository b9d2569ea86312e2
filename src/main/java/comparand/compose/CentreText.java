package comparand.compose;

import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.RowLog;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The fixed sentence where two devices were not used in the same hospitals: their difference holds that of hospitals. */
final class CentreText {

    private final Words words;
    private final Names names;
    private final RowLog log;

    CentreText(Words words, Names names, RowLog log) {
        this.words = words;
        this.names = names;
        this.log = log;
    }

    /** Without a full stop; empty where both devices were used in the same centres, or nobody names them. */
    Optional<String> of(Pairing pairing) {
        if (pairing.purpose() != Purpose.AGAINST_PRESENT_DEVICE) {
            return Optional.empty();
        }
        var ours = centres(pairing.ours());
        var theirs = centres(pairing.theirs());
        if (ours.isEmpty() || theirs.isEmpty() || ours.equals(theirs)) {
            return Optional.empty();
        }
        var shared = new TreeSet<>(ours);
        shared.retainAll(theirs);
        return Optional.of(words.say(
                shared.isEmpty() ? "centres.apart" : "centres.tangled",
                "ours",
                names.brief(pairing.ours().device()),
                "theirs",
                names.brief(pairing.theirs().device()),
                "oursIn",
                String.join(", ", ours),
                "theirsIn",
                String.join(", ", theirs),
                "shared",
                String.join(", ", shared)));
    }

    private List<String> centres(Comparand comparand) {
        var study =
                comparand.origin().fold(p -> "", (Origin.Local l) -> l.study().id());
        return log.counts().stream()
                .filter(c -> c.step().isEmpty()
                        && c.study().equals(study)
                        && c.device().equals(comparand.device()))
                .map(RowLog.Count::centre)
                .filter(c -> !c.isEmpty())
                .sorted()
                .toList();
    }
}
