package comparand.study.quality;

import java.util.Set;

/** What flows through the device. */
final class Fluids {

    /** Test models whose fluid has no red cells. */
    private static final Set<String> WITHOUT_CELLS = Set.of("bench-water", "bench-glycerol", "computational");

    private Fluids() {}

    /** Whether a quantity of red cells is asked of a fluid that has none. */
    static boolean hasNoCells(QualityRow row, String quantity) {
        return (quantity.startsWith("haemoglobin") || quantity.startsWith("haematocrit"))
                && row.word("test-model").filter(WITHOUT_CELLS::contains).isPresent();
    }

    /** Whether blood is said to flow, in L/min; a flow that nobody gives is not 0. */
    static boolean flows(QualityRow row) {
        return row.given("blood-flow").filter(q -> q > 0).isPresent();
    }
}
