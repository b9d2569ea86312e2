package comparand.compose.results;

import comparand.compose.text.Kebab;
import comparand.document.result.ComparandResult.LocalMeanResult;
import comparand.model.Answer;
import comparand.model.Comparand;
import comparand.model.LocalPart;
import comparand.model.Summary;
import comparand.model.library.DossierRecord;
import comparand.model.library.SampleUnit;
import comparand.stat.Interval;
import comparand.stat.LocalMean;
import comparand.stat.ToleranceFactor;
import java.util.List;
import java.util.Optional;

/** What stands behind a local mean: how it allows for hospitals, where single results lie, and the results of units. */
public final class LocalMeans {

    /** Fewer single results than these are listed. */
    private static final int FEW = 10;

    private LocalMeans() {}

    public static LocalMeanResult of(Summary.Sampled summary, LocalMean mean) {
        var spread = mean.spread();
        return new LocalMeanResult(
                Kebab.of(mean.rule()),
                summary.moments().mean(),
                mean.estimate().se(),
                mean.estimate().df(),
                spread.map(s -> Math.sqrt(s.twoStage().tau2())),
                spread.map(s -> ComparandResults.range(between(s))),
                spread.map(s -> s.components().icc()),
                spread.map(s -> ComparandResults.range(s.components().iccInterval(Answer.LEVEL))),
                spread.map(s -> s.oneStage().mean()),
                tolerance(summary).map(ComparandResults::range));
    }

    /** Of the SD between hospitals. */
    public static Interval between(LocalMean.Spread spread) {
        return new Interval(
                Math.sqrt(spread.tau2().low()), Math.sqrt(spread.tau2().high()));
    }

    /** Where most units or cases are expected; of a few, or of several hospitals, nothing can be said. */
    public static Optional<Interval> tolerance(Summary.Sampled summary) {
        return summary.local().filter(LocalMean::coversFurther).isPresent()
                        && summary.moments().n() >= Answer.ToleranceBound.FEWEST
                ? Optional.of(ToleranceFactor.EXACT.interval(
                        summary.moments(), Answer.ToleranceBound.SHARE, Answer.ToleranceBound.CONFIDENCE))
                : Optional.empty();
    }

    /**
     * Results of single units, and of single runs of one unit. Those of cases only where the dossier lets them be seen, by
     * hospital: a sum over hospitals would give away a group too small to be shown.
     */
    public static List<Double> each(Comparand comparand, Summary.Sampled summary, DossierRecord dossier) {
        boolean patients = comparand.sizes().get(SampleUnit.CASES).isPresent()
                || comparand.sizes().get(SampleUnit.PATIENTS).isPresent();
        boolean units = comparand.sizes().get(SampleUnit.UNITS).isPresent() && !patients;
        boolean shownCases = patients
                && dossier.showsCases()
                && comparand.isLocal(LocalPart.CENTRE)
                && summary.each().size() >= dossier.smallestGroup();
        return shownCases || (units && summary.each().size() < FEW) ? summary.each() : List.of();
    }
}
