package comparand.model.library;

import comparand.diag.Located;
import comparand.metric.Better;
import comparand.metric.Nature;
import comparand.unit.DecimalSign;
import comparand.unit.PrintedNumber;
import comparand.unit.PrintedRange;
import java.util.List;
import java.util.Optional;

/** A metric the library declares beside those the tool ships. */
@Meaning("A metric of the library's own, kept in metrics/")
public record MetricRecord(
        @Meaning("Name of the metric: the file name without its ending")
        Located<String> metric,

        @Meaning("Its name in sentences") Located<String> name,
        @Meaning("Its symbol") Located<String> symbol,

        @Meaning("One sentence: what is measured between what and what")
        Located<String> means,

        @Meaning("The unit all values are brought to; 1 for a bare number")
        Located<String> unit,

        @Meaning("measured, stated or event") Located<Nature> nature,
        @Meaning("more, less or neither") Located<Better> better,

        @Meaning("The decimal sign of the numbers in this file; point unless declared")
        Optional<Located<DecimalSign>> decimal,

        @Meaning("The most decimals a result is printed with") @Key("most-decimals")
        Optional<Located<PrintedNumber>> mostDecimals,

        @Meaning("Outside of this a value is worth a second look")
        Optional<Located<PrintedRange>> plausible,

        @Meaning("Outside of this a value cannot be right") Optional<Located<PrintedRange>> possible,

        @Meaning("Respects in which its definitions differ in print")
        List<AspectRecord> definition,

        @Meaning("The conditions it depends on, in the order they are printed")
        List<ConditionUseRecord> conditions,

        @Meaning("The condition along which values may be read off between two neighbours") @Key("interpolates-over")
        Optional<Located<String>> interpolatesOver,

        @Meaning("Metrics that go by a similar name and are another quantity") @Key("not-to-be-confused-with")
        Optional<OneOrMore<Located<String>>> confusedWith,

        @Meaning("Where it is defined") @AtLeast(1) List<CitationRecord> citations,

        @Meaning("The quantities its formula takes") List<InputRecord> inputs,

        @Meaning(
                "Arithmetic over the symbols of the inputs: + - * / ^ ( ) sqrt exp ln log10 min max abs; units are converted")
        Optional<Located<String>> formula,

        @Meaning(
                "yes if the formula takes bare numbers in the units of its inputs, and gives one in the unit of the metric")
        Optional<Located<YesNo>> empirical,

        @Meaning("The variants of the definition that the formula follows") @Key("formula-follows")
        Entries<Located<String>> formulaFollows,

        @Meaning("Worked values, at least one if there is a formula")
        List<WorkedRecord> worked) {

    public String id() {
        return metric.value();
    }
}
