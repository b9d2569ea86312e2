package comparand.compare;

import comparand.model.Summary;
import comparand.stat.MeanEstimate;
import java.util.Optional;

/** What one side of a pair is known to be, with all of its uncertainty. */
final class KnownSide {

    private KnownSide() {}

    /** Its mean with its standard error, rounding and reading included; empty where there is no single figure. */
    static Optional<MeanEstimate> of(Summary summary) {
        return summary.fold(new Summary.Cases<>() {
            @Override
            public Optional<MeanEstimate> sampled(Summary.Sampled s) {
                return Optional.of(s.estimate().widenedBy(s.halfWidth()));
            }

            @Override
            public Optional<MeanEstimate> estimated(Summary.Estimated s) {
                return Optional.of(s.estimate());
            }

            @Override
            public Optional<MeanEstimate> eitherSpread(Summary.EitherSpread s) {
                return Optional.of(s.asSe().estimate().widenedBy(s.halfWidth()));
            }

            @Override
            public Optional<MeanEstimate> point(Summary.Point s) {
                return Optional.of(new MeanEstimate(s.value(), 0, Double.POSITIVE_INFINITY).widenedBy(s.halfWidth()));
            }

            @Override
            public Optional<MeanEstimate> limit(Summary.Limit s) {
                return Optional.empty();
            }

            @Override
            public Optional<MeanEstimate> extent(Summary.Extent s) {
                return Optional.empty();
            }

            @Override
            public Optional<MeanEstimate> events(Summary.Events s) {
                return Optional.empty();
            }

            @Override
            public Optional<MeanEstimate> words(Summary.Words s) {
                return Optional.empty();
            }
        });
    }
}
