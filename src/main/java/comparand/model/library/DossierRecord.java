package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.DecimalSign;
import comparand.unit.PrintedNumber;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One question to be decided, and everything that was fixed before the data were seen. */
@Meaning("A question, its margins and its readers, kept in dossiers/")
public record DossierRecord(
        @Meaning("Name of the dossier: the file name without its ending")
        Located<String> dossier,

        @Meaning("As it is printed on every output") Located<String> title,
        @Meaning("The question") Located<String> question,
        @Meaning("The decision it serves") Located<String> decision,

        @Meaning("The day on which question, metrics and margins were fixed")
        Located<LocalDate> fixed,

        @Meaning("The day on which the first local results were seen") @Key("first-seen")
        Optional<Located<LocalDate>> firstSeen,

        @Meaning("The day this report speaks of: run date and data cut-off") @Key("as-of")
        Located<LocalDate> asOf,

        @Meaning("Who prepared it") @Key("prepared-by") Located<String> preparedBy,
        @Meaning("draft or released") Located<DossierState> state,

        @Meaning("The language of the documents, such as en or de; en unless given")
        Optional<Located<String>> language,

        @Meaning("Funding and interests of those who prepared it, as it is to be printed")
        Optional<Located<String>> interests,

        @Meaning("yes if single cases may be shown as points of a figure; groups below the smallest stay hidden")
        @Key("show-cases")
        Optional<Located<YesNo>> showCases,

        @Meaning("yes if devices, people and numbers are invented; every output then says so") @Key("invented-data")
        Located<YesNo> inventedData,

        @Meaning("The decimal sign of the numbers in this file; point unless declared")
        Optional<Located<DecimalSign>> decimal,

        @Meaning("The devices compared, in the order they are printed") @AtLeast(1)
        List<Located<String>> devices,

        @Meaning("The device in use today, with which the others are compared") @Key("present-device")
        Located<String> presentDevice,

        @Meaning("The local studies used") List<Located<String>> studies,

        @Meaning("The sources used; all that have values of these devices unless given")
        List<Located<String>> sources,

        @Meaning("The log in screening/ that says how the sources were found, and what else was")
        Optional<Located<String>> screening,

        @Meaning("Sources and values left out") @Key("leave-out")
        List<LeaveOutRecord> leaveOut,

        @Meaning("One entry per metric") @AtLeast(1) List<QuestionRecord> questions,

        @Meaning("The fewest patients that are shown as a group of their own; 5 unless given") @Key("smallest-group")
        Optional<Located<PrintedNumber>> smallest,

        @Meaning("Tolerances in place of the catalogue's") List<ToleranceRecord> tolerances,

        @Meaning("The metric on which the decision rests; it is outside the adjustment for the number of comparisons")
        Optional<Located<String>> primary,

        @Meaning("What else might have been decided; what would change is printed")
        List<ScenarioRecord> scenarios,

        @Meaning("What matters for the decision and no metric here tests")
        List<UnknownRecord> unknowns,

        @Meaning("The day of the report before this one; what changed from that day on is listed")
        Optional<Located<LocalDate>> since,

        @Meaning("What a case costs, item by item, as the house was told; the tool looks no price up")
        List<CostRecord> costs,

        @Meaning("How much each metric counts; a score is made in the workbook only if they are given")
        Optional<WeightsRecord> weights,

        @Meaning("What a manuscript has to say beside the data")
        Optional<ManuscriptRecord> manuscript) {

    private static final int SMALLEST_GROUP = 5;

    /** The fewest patients that are shown as a group of their own. */
    public int smallestGroup() {
        return smallest.map(n -> n.value().value().intValue()).orElse(SMALLEST_GROUP);
    }

    /** Whether single cases may be seen. */
    public boolean showsCases() {
        return showCases.map(y -> y.value().isYes()).orElse(false);
    }

    /** The language of the documents. */
    public String languageOrEnglish() {
        return language.map(Located::value).orElse("en");
    }

    /** Those of the dossier and of its scenarios. */
    public List<ToleranceRecord> allTolerances() {
        return Stream.concat(tolerances.stream(), scenarios.stream().flatMap(s -> s.tolerances().stream()))
                .toList();
    }

    public String id() {
        return dossier.value();
    }
}
