package comparand.compare;

import comparand.model.Comparand;
import comparand.model.Evidence;
import comparand.model.LocalPart;
import comparand.model.Pairing;
import comparand.model.Planned.Reach;
import comparand.model.Summary;
import comparand.model.library.SampleUnit;
import comparand.stat.LocalMean;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** For which hospitals the numbers of a plan can hold: the spread between hospitals is known from three on. */
final class CentreReach {

    private static final int FEWEST_CENTRES = 3;

    private final Evidence evidence;

    CentreReach(Evidence evidence) {
        this.evidence = evidence;
    }

    /** From the local sides of a pair; of two spreads between hospitals the wider one. */
    Reach of(Pairing pairing) {
        var local = Stream.of(pairing.ours(), pairing.theirs())
                .filter(Comparand::isLocal)
                .toList();
        if (local.stream().noneMatch(CentreReach::dependsOnCentres)) {
            return Reach.ONE_PLACE;
        }
        var tau = local.stream()
                .map(this::between)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max();
        int cases = local.stream().mapToInt(CentreReach::cases).sum();
        int centres = local.stream().mapToInt(CentreReach::centres).sum();
        return tau.isPresent()
                ? new Reach(
                        Reach.Kind.ACROSS_HOSPITALS,
                        Math.max(1, Math.round((float) cases / centres)),
                        tau.getAsDouble())
                : Reach.SAME_HOSPITALS;
    }

    /** Cases of any hospital, and units or runs of several laboratories; one laboratory tells of the units it had. */
    private static boolean dependsOnCentres(Comparand local) {
        boolean cases = local.sizes()
                .independent()
                .map(s -> s.of() == SampleUnit.CASES || s.of() == SampleUnit.PATIENTS)
                .orElse(false);
        return centres(local) > (cases ? 0 : 1);
    }

    /** {@code √τ²} of the means of three centres or more. */
    private OptionalDouble between(Comparand whole) {
        var values = evidence.local().stream()
                .filter(c -> isCentreOf(c, whole))
                .map(c -> values(c.summary()))
                .filter(v -> v.length > 0)
                .toList();
        return values.size() < FEWEST_CENTRES
                ? OptionalDouble.empty()
                : LocalMean.of(values, Answers.LEVEL)
                        .value()
                        .flatMap(LocalMean::spread)
                        .map(s -> OptionalDouble.of(Math.sqrt(s.twoStage().tau2())))
                        .orElse(OptionalDouble.empty());
    }

    private static boolean isCentreOf(Comparand part, Comparand whole) {
        return part.isLocal(LocalPart.CENTRE)
                && part.metric().equals(whole.metric())
                && part.device().equals(whole.device())
                && part.origin()
                        .fold(
                                p -> false,
                                l -> whole.origin()
                                        .fold(
                                                p -> false,
                                                w -> l.study().equals(w.study())
                                                        && l.group()
                                                                .equals(
                                                                        w.group()
                                                                                        .isEmpty()
                                                                                ? l.scope()
                                                                                        .centre()
                                                                                : w.group() + ", "
                                                                                        + l.scope()
                                                                                                .centre())));
    }

    private static double[] values(Summary summary) {
        return summary instanceof Summary.Sampled s
                ? s.each().stream().mapToDouble(d -> d).toArray()
                : summary instanceof Summary.Point p ? new double[] {p.value()} : new double[0];
    }

    private static int centres(Comparand local) {
        return local.sizes().get(SampleUnit.CENTRES).orElse(0);
    }

    private static int cases(Comparand local) {
        return local.sizes().independent().map(s -> s.count()).orElse(0);
    }
}
