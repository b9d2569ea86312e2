package comparand.check;

import java.util.List;

/** All rules, grouped by what they look at. A rule that is not listed here does not exist. */
final class Rules {

    static final List<Rule> ALL = List.of(
            // names
            new ValueIdTwice(),
            new DeviceUnknown(),
            new MetricUnknown(),
            new SuccessorUnknown(),
            new InstructionsUnknown(),
            new DossierNamesUnknown(),
            new NamedTwice(),
            new PartUnknown(),
            new PresentDeviceNotListed(),
            // what is printed
            new UnitMissing(),
            new UnitDimension(),
            new FormForMetric(),
            new ValueImpossible(),
            new ValueImplausible(),
            new NumberNotInQuote(),
            new QuoteTooLong(),
            new PlaceMissing(),
            new LimitAsValue(),
            new ReferenceFlowAsLimit(),
            new SecondHand(),
            // spread and number
            new SpreadKindMissing(),
            new SpreadFigures(),
            new SpreadUnlabelled(),
            new SpreadImplausible(),
            new NumberMissing(),
            // definition and conditions
            new AspectUnknown(),
            new VariantUnknown(),
            new DefinitionMissing(),
            new ConditionUnknown(),
            new ConditionNotStated(),
            new ConditionUnit(),
            new ConditionWord(),
            // reading
            new ReadersDisagree(),
            new ReadOnce(),
            new CorrectedAfterReading(),
            new FigureCalibration(),
            new FigureAxis(),
            new FigurePicture(),
            new FigureErrorBar(),
            // sources and devices
            new RevisionMissing(),
            new StatusCheckOld(),
            new ConcernExpressed(),
            new CohortTime(),
            new CohortsOverlap(),
            new LetterNotCited(),
            new DateInFuture(),
            new LabelUnit(),
            new LimitsUnit(),
            new InventedReference(),
            // screening
            new ScreeningNames(),
            new FlowCounts(),
            // dossiers and studies
            new MarginMissing(),
            new MarginUnit(),
            new MarginWithoutReason(),
            new MarginAfterData(),
            new PlanUnit(),
            new PlanPower(),
            new PlanWithoutUse(),
            new ToleranceUnreadable(),
            new ToleranceWithoutReason(),
            new ToleranceAfterData(),
            new QuestionTwice(),
            new ScenarioEmpty(),
            new CostCurrency(),
            new CostImpossible(),
            new WeightsWithoutName(),
            new WeightNotPositive(),
            new WeightWithoutDirection(),
            new WeightsAfterData(),
            new RetractedSourceUsed(),
            new StepUnknown(),
            new VerdictWord());

    private Rules() {}
}
