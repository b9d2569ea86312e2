package comparand.study.quality;

import java.util.Optional;

/**
 * Checks whether blood flows at all. It matters because circulatory arrest is no fault, yet what is divided by flow, or
 * means something only at a flow, has no value then. The row is kept from these metrics. What to do: nothing.
 */
final class NoBloodFlow implements QualityRule {

    @Override
    public String code() {
        return "no-blood-flow";
    }

    @Override
    public String why() {
        return "what is divided by flow, or means something only at a flow, has no value in circulatory arrest";
    }

    @Override
    public String fix() {
        return "nothing to mend if the pump stood still; else correct the cell";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        return row.given("blood-flow")
                .filter(q -> q == 0)
                .map(q -> new QualityFinding("`blood-flow` is 0", new Effect.ExcludeNeeding("blood-flow")));
    }
}
