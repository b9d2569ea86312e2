package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that blood leaves the device fuller of oxygen than it came: outlet saturation at least 0.02 above inlet
 * saturation, where blood flows and the gas has an oxygen fraction of 0.4 or more. It matters because two samples that
 * were swapped turn the transfer round. The row is kept and pointed out: blood that arrives nearly full does leave so
 * too. What to do: look at the two reports of the analyser.
 */
final class SamplesSwapped implements QualityRule {

    private static final double ENOUGH_OXYGEN = 0.4;
    private static final double LEAST_RISE = 0.02;

    @Override
    public String code() {
        return "samples-swapped";
    }

    @Override
    public String why() {
        return "samples taken for each other turn the transfer round";
    }

    @Override
    public String fix() {
        return "compare the row with the reports of the analyser; swap the cells in the file, or list the row under `dropped:` with a reason";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var before = row.given("inlet-saturation");
        var after = row.given("outlet-saturation");
        boolean gives = Fluids.flows(row)
                && row.given("oxygen-fraction").filter(f -> f >= ENOUGH_OXYGEN).isPresent();
        return gives && before.isPresent() && after.isPresent() && after.get() < before.get() + LEAST_RISE
                ? Optional.of(QualityFinding.remark(
                        "`outlet-saturation` %s is not 0.02 above `inlet-saturation` %s, as if the samples were swapped"
                                .formatted(Amounts.plain(after.get(), 3), Amounts.plain(before.get(), 3))))
                : Optional.empty();
    }
}
