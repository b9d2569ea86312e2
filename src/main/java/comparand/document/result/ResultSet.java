package comparand.document.result;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** Everything a run found. */
@Says("The results of one run of one dossier")
public record ResultSet(
        @Says(
                "comparand-results- and the version of this format; a new number when a field changes its meaning or goes")
        String format,

        @Says("What was run, when, by what, on which inputs")
        RunResult run,

        @Says("Devices in printing order") List<DeviceResult> devices,
        @Says("Sources in the order of their numbers") List<SourceResult> sources,

        @Says("Questions with their metrics, margins and tolerances")
        List<QuestionResult> questions,

        @Says("Every number, local and published, on one footing")
        List<ComparandResult> comparands,

        @Says("Every pair with its standing and answer") List<PairResult> pairs,

        @Says("What several sources say together, where more than one may be compared with the same local result")
        List<TogetherResult> together,

        @Says("What becomes of the answers under each scenario of the dossier")
        List<ScenarioResult> scenarios,

        @Says("What is not known, by how much it could change the decision")
        List<UnknownResult> unknowns,

        @Says("Published values for which there is nothing local to set beside")
        List<UnpairedResult> unpaired,

        @Says("For each metric and device, how far published values may be compared")
        List<ComparabilityResult> comparability,

        @Says("Values that take no part, with reasons") List<SetAsideResult> setAside,

        @Says("How the sources were found, and what became of every record; absent where no log was kept")
        Optional<ScreeningResult> screening,

        @Says("What became of the rows of the raw files") RowLogResult rowLog,

        @Says("What a case costs, as far as prices were supplied")
        CostsResult costs,

        @Says("Scores by weights; absent where no weights were supplied")
        Optional<WeightsResult> weights,

        @Says("What changed since an earlier report") ChangesResult changes,
        @Says("Letters that ask for what was not reported") List<RequestResult> requests,

        @Says("Findings on the library that did not stop the run")
        List<FindingResult> findings,

        @Says("Cautions that go with every output") List<String> cautions,

        @Says("Counts that running text names, by what is counted")
        SortedMap<String, Integer> counts,

        @Says("What limits the comparisons, by how many each affects, most first")
        List<LimitationResult> limitations) {

    /** What {@code format} begins with in every version. */
    public static final String FORMATS = "comparand-results-";

    /** This version. */
    public static final String FORMAT = FORMATS + "1";
}
