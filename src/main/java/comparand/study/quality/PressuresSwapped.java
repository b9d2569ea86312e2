package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that the pressure falls along the device where blood flows. It matters because ports or transducers that were
 * swapped turn the sign of every drop. The row is kept and pointed out. What to do: look at the lines of the
 * transducers.
 */
final class PressuresSwapped implements QualityRule {

    @Override
    public String code() {
        return "pressures-swapped";
    }

    @Override
    public String why() {
        return "ports or transducers taken for each other turn the sign of the drop";
    }

    @Override
    public String fix() {
        return "swap the cells, or the two columns in the mapping; or list the row under `dropped:` with a reason";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        return Fluids.flows(row)
                ? row.number("pressure-drop")
                        .filter(p -> p <= 0)
                        .map(p -> QualityFinding.remark(
                                "`pressure-drop` %s mmHg is not above 0 although blood flows, as if ports or transducers were swapped"
                                        .formatted(Amounts.plain(p, 3))))
                : Optional.empty();
    }
}
