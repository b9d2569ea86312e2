package comparand.study.quality;

import java.util.List;
import java.util.Optional;

/**
 * Checks a measured saturation against the one that oxygen pressure and pH of the same sample give for human blood: they
 * differ by at most 0.05. It matters because air in a sample, or a cell from another sample, shows here first. The row
 * is kept and pointed out. What to do: look at the report; of calculated saturations, say so in the definition of the
 * file.
 */
final class SaturationAgainstPressure implements QualityRule {

    private static final double MOST_APART = 0.05;
    private static final List<String> CALCULATED = List.of("severinghaus", "kelman");

    private final String saturation;

    SaturationAgainstPressure(String saturation) {
        this.saturation = saturation;
    }

    @Override
    public String code() {
        return "saturation-disagrees";
    }

    @Override
    public String why() {
        return "air in a sample, or a cell from another sample, shows here first";
    }

    @Override
    public String fix() {
        return "compare the row with the report of the analyser; write `saturation-kind: severinghaus` under `definition:` if it was calculated";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        if (row.variant("saturation-kind").filter(CALCULATED::containsAll).isPresent()) {
            return Optional.empty();
        }
        var measured = row.given(saturation);
        var calculated = row.computed(saturation, "saturation-kind", "severinghaus");
        return measured.isPresent()
                        && calculated.isPresent()
                        && Math.abs(measured.get() - calculated.get()) > MOST_APART
                ? Optional.of(QualityFinding.remark(
                        "`%s` %s is more than 0.05 from %s, which oxygen pressure and pH of the sample give"
                                .formatted(
                                        saturation,
                                        Amounts.plain(measured.get(), 3),
                                        Amounts.plain(calculated.get(), 3))))
                : Optional.empty();
    }
}
