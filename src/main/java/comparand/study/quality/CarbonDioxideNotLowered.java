package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that blood leaves with less carbon dioxide pressure than it came, where sweep gas flows. It matters because
 * samples that were swapped, or one that stood in air, give a transfer that never was. The row is kept and pointed out.
 * What to do: look at the two reports of the analyser.
 */
final class CarbonDioxideNotLowered implements QualityRule {

    @Override
    public String code() {
        return "carbon-dioxide-not-lowered";
    }

    @Override
    public String why() {
        return "samples taken for each other, or spoilt by air, give a transfer that never was";
    }

    @Override
    public String fix() {
        return "compare the row with the reports of the analyser; correct the cells, or list the row under `dropped:` with a reason";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var before = row.given("inlet-pco2");
        var after = row.given("outlet-pco2");
        boolean swept = row.given("sweep-gas-flow").filter(g -> g > 0).isPresent();
        return swept && before.isPresent() && after.isPresent() && after.get() >= before.get()
                ? Optional.of(QualityFinding.remark(
                        "`outlet-pco2` %s mmHg is not below `inlet-pco2` %s mmHg, as if the samples were swapped"
                                .formatted(Amounts.plain(after.get(), 3), Amounts.plain(before.get(), 3))))
                : Optional.empty();
    }
}
