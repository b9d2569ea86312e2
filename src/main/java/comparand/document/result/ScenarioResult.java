package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** What becomes of the answers when something else is supposed. */
public record ScenarioResult(
        @Says("What is supposed") String suppose,
        @Says("Why somebody would ask") String because,
        @Says("Pairs that are left") int pairs,
        @Says("Pairs whose answer changes") int changed,

        @Says("Pairs that fall away because the published value is left out")
        int leftOut,

        @Says("Each of them before and after") List<ChangeResult> changes) {

    /** One answer before and after. */
    public record ChangeResult(
            @Says("Name of the metric") String metric,
            @Says("Name of our value, as in the run itself") String ours,
            @Says("Names of the published or other values") List<String> theirs,

            @Says("What it is set beside, as printed: places in sources, or a device")
            String beside,

            @Says("Difference and interval as printed, in the run itself")
            Optional<String> shownBefore,

            @Says("The answer in the run itself") String before,

            @Says("Difference and interval as printed, under the scenario")
            Optional<String> shownAfter,

            @Says("The answer under the scenario; absent where the value is left out")
            Optional<String> after) {}
}
