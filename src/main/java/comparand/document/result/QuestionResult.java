package comparand.document.result;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** A question of the dossier. */
public record QuestionResult(
        @Says("Name of the metric") String metric,
        @Says("The metric in words") String name,
        @Says("Its symbol") String symbol,
        @Says("The unit of all its values") String unit,
        @Says("The question in the readers' words") String asks,

        @Says("The margin in the metric's unit; absent where none was set")
        Optional<Double> margin,

        @Says("The margin as written") String marginText,
        @Says("Why that margin") Optional<String> reason,
        @Says("more, less or neither is favourable") String better,
        @Says("The definition all are brought to") SortedMap<String, String> definition,
        @Says("Conditions with their tolerances") List<ToleranceResult> tolerances) {

    /** How one condition was judged. */
    public record ToleranceResult(
            @Says("The condition") String condition,
            @Says("The condition in words") String name,
            @Says("decides or qualifies") String role,
            @Says("The tolerance in words") String tolerance,

            @Says("catalogue, or the reason the dossier gives")
            String from) {}
}
