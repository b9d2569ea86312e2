package comparand.study.quality;

import comparand.metric.Bounds;
import java.util.Optional;

/**
 * Checks that carbon dioxide given off stands to oxygen taken up as 0.5 to 1.5. It matters because both transfers come
 * from the same flow and samples, so a ratio outside says that one of them is wrong: a changed sweep, carbon dioxide in
 * the field, bicarbonate, a unit. From blood alone it is unsure by a third. The row is kept and pointed out. What to do: look at sweep and carbon dioxide.
 */
final class ExchangeRatioUnusual implements QualityRule {

    private static final String RATIO = "respiratory-exchange-ratio";
    private static final Bounds USUAL = new Bounds(0.5, 1.5);

    @Override
    public String code() {
        return "exchange-ratio-unusual";
    }

    @Override
    public String why() {
        return "both transfers come from the same flow and samples, so one of them is wrong";
    }

    @Override
    public String fix() {
        return "look for a change of sweep gas, carbon dioxide in the field, bicarbonate given, or a unit";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        return row.number(RATIO)
                .or(() -> row.computed(RATIO, "side", "blood-side"))
                .filter(r -> !USUAL.contain(r))
                .map(r -> QualityFinding.remark(
                        "`respiratory-exchange-ratio` %s is outside of 0.5 to 1.5".formatted(Amounts.plain(r, 3))));
    }
}
