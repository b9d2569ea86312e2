package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that blood leaves with less oxygen than full equilibrium with the gas would give it. It matters because there
 * is no shunt fraction otherwise: oxygen fraction, barometric pressure or the constants are wrong. The row is kept from
 * the shunt fraction. What to do: look at these three.
 */
final class IdealContentReached implements QualityRule {

    @Override
    public String code() {
        return "ideal-content-reached";
    }

    @Override
    public String why() {
        return "without a gap to full equilibrium there is no shunt fraction";
    }

    @Override
    public String fix() {
        return "check oxygen fraction, barometric pressure and the constants of the oxygen content";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var ideal = row.number("ideal-oxygen-content");
        var after = row.number("outlet-oxygen-content");
        return ideal.isPresent() && after.isPresent() && ideal.get() <= after.get()
                ? Optional.of(new QualityFinding(
                        "`outlet-oxygen-content` %s mL/dL is not below `ideal-oxygen-content` %s mL/dL"
                                .formatted(Amounts.plain(after.get(), 4), Amounts.plain(ideal.get(), 4)),
                        Effect.exclude("shunt-fraction")))
                : Optional.empty();
    }
}
