package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedRange;

/** A limit of use that the label sets. */
public record LabelRecord(
        @Meaning("The condition that is limited, such as blood-flow, patient-weight or duration")
        Located<String> limits,

        @Meaning("From and to, such as 0.1 to 1.5 L/min") Located<PrintedRange> range,
        @Meaning("Where the label says so") SourcedRecord from) {}
