package comparand.compose.text;

import comparand.model.Comparand;
import comparand.model.Origin;
import comparand.model.Pairing;
import comparand.model.Pairing.Purpose;
import comparand.model.RowLog;
import comparand.model.Summary;
import comparand.model.library.SampleUnit;
import comparand.stat.LocalMean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The fixed sentence where two devices were not used in the same hospitals: their difference holds that of hospitals. */
public final class CentreText {

    private final Words words;
    private final Names names;
    private final RowLog log;

    public CentreText(Words words, Names names, RowLog log) {
        this.words = words;
        this.names = names;
        this.log = log;
    }

    /** Without a full stop; empty where both devices were used in the same centres, or nobody names them. */
    public Optional<String> of(Pairing pairing) {
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

    /** How the means of a pair allow for hospitals, or that there is one unit only; each rule once. */
    public List<String> means(Pairing pairing) {
        var whose = new LinkedHashMap<String, List<String>>();
        for (var side : List.of(pairing.ours(), pairing.theirs())) {
            mean(pairing.purpose(), side)
                    .ifPresent(how ->
                            whose.computeIfAbsent(how, h -> new ArrayList<>()).add(names.brief(side.device())));
        }
        return whose.entrySet().stream()
                .map(e -> words.say("centres.whose", "device", String.join(", ", e.getValue()), "how", e.getKey()))
                .toList();
    }

    private Optional<String> mean(Purpose purpose, Comparand comparand) {
        boolean ofOneCentre = purpose == Purpose.WITHIN_CENTRE
                || comparand.sizes().get(SampleUnit.UNITS).isPresent();
        return comparand.summary() instanceof Summary.Sampled s
                ? s.local()
                        .filter(m -> m.rule() != LocalMean.Rule.ONE_CENTRE || !ofOneCentre)
                        .map(this::of)
                : Optional.empty();
    }

    /** One rule, in words. */
    public String of(LocalMean mean) {
        return words.say(
                "centres.mean." + mean.rule().name(),
                "n",
                String.valueOf(mean.cases()),
                "centres",
                String.valueOf(mean.centreCount()),
                "df",
                String.valueOf(Math.round(mean.estimate().df())));
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
