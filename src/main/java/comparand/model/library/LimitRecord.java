package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedRange;
import java.util.Optional;

/** Other limits for the results of one metric than the catalogue's, for one file. */
public record LimitRecord(
        @Meaning("What the metric can be in this file, as 0 to 600 mmHg; outside of it a group is not compared")
        Optional<Located<PrintedRange>> possible,

        @Meaning("What is usual in this file; outside of it a row is pointed out")
        Optional<Located<PrintedRange>> plausible,

        @Meaning("Why the catalogue's limits do not hold here")
        Located<String> reason) {}
