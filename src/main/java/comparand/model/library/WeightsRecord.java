package comparand.model.library;

import comparand.diag.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** How much each metric counts for those who decide. Without it no score is made. */
public record WeightsRecord(
        @Meaning("Who set the weights; weights nobody answers for are not used") @Key("set-by")
        Optional<Located<String>> setBy,

        @Meaning("When they were set") Located<LocalDate> on,

        @Meaning("One entry for each metric that counts") @AtLeast(1)
        List<WeightRecord> of) {}
