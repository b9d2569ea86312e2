package comparand.model.library;

import comparand.diag.Located;
import java.util.List;
import java.util.Optional;

/** What else might have been decided: the comparisons are run again under it, and what changes is printed. */
public record ScenarioRecord(
        @Meaning("What is supposed, in a few words, as it is printed")
        Located<String> suppose,

        @Meaning("Why somebody would ask for it") Located<String> because,

        @Meaning("Sources and values left out") @Key("leave-out")
        List<Located<String>> leaveOut,

        @Meaning("Kinds of sources left out, such as abstract") @Key("leave-out-kinds")
        List<Located<SourceKind>> leaveOutKinds,

        @Meaning("Sources left out by who paid for them, such as maker") @Key("leave-out-funding")
        List<Located<Funding>> leaveOutFunding,

        @Meaning("Values left out by how they are known: estimated, digitised or approximate") @Key("leave-out-values")
        List<Located<HowKnown>> leaveOutValues,

        @Meaning("Tolerances in place of those of the dossier and the catalogue")
        List<ToleranceRecord> tolerances,

        @Meaning("How a spread is read of which the source does not say what it is: sd or se") @Key("unstated-spread")
        Optional<Located<SpreadReading>> unstatedSpread) {}
