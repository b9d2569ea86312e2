package comparand.compare;

import comparand.model.Comparand;
import comparand.model.Pairing;
import comparand.model.Planned.Reach;
import comparand.model.Summary;
import comparand.model.library.SampleUnit;
import comparand.stat.LocalMean;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** For which hospitals the numbers of a plan can hold: the spread between hospitals is known from three on. */
final class CentreReach {

    private CentreReach() {}

    /** From the local sides of a pair; of two spreads between hospitals the wider one. */
    static Reach of(Pairing pairing) {
        var local = Stream.of(pairing.ours(), pairing.theirs())
                .filter(Comparand::isLocal)
                .toList();
        if (local.stream().noneMatch(CentreReach::dependsOnCentres)) {
            return Reach.ONE_PLACE;
        }
        var tau = local.stream()
                .map(CentreReach::between)
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
    private static OptionalDouble between(Comparand local) {
        return local.summary() instanceof Summary.Sampled s
                ? s.local()
                        .flatMap(LocalMean::spread)
                        .map(b -> OptionalDouble.of(Math.sqrt(b.twoStage().tau2())))
                        .orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
    }

    private static int centres(Comparand local) {
        return local.sizes().get(SampleUnit.CENTRES).orElse(0);
    }

    private static int cases(Comparand local) {
        return local.sizes().independent().map(s -> s.count()).orElse(0);
    }
}
