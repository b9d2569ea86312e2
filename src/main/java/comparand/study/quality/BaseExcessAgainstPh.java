package comparand.study.quality;

import java.util.Optional;

/**
 * Checks base excess against pH, carbon dioxide pressure and haemoglobin of the outlet sample: it differs by at most 3
 * mmol/L from what they give by the equation of Van Slyke as Siggaard-Andersen wrote it (Scand J Clin Lab Invest 1977;37
 * Suppl 146:15-20, constants from memory; analysers differ by about 1 mmol/L among themselves). It matters because a
 * lost minus sign looks plausible. The row is kept and pointed out. What to do: look at the sign.
 */
final class BaseExcessAgainstPh implements QualityRule {

    private static final double MOST_APART = 3;

    @Override
    public String code() {
        return "base-excess-disagrees";
    }

    @Override
    public String why() {
        return "a lost minus sign looks like any other base excess";
    }

    @Override
    public String fix() {
        return "compare sign and number with the report of the analyser";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var stated = row.given("base-excess");
        var hb = row.given("haemoglobin");
        var computed = hb.flatMap(h ->
                row.given("outlet-pco2").flatMap(p -> row.given("outlet-ph").map(ph -> vanSlyke(p, ph, h))));
        return stated.isPresent() && computed.isPresent() && Math.abs(stated.get() - computed.get()) > MOST_APART
                ? Optional.of(QualityFinding.remark(
                        "`base-excess` %s mmol/L is more than 3 mmol/L from %s mmol/L, which pH and carbon dioxide give%s"
                                .formatted(
                                        Amounts.plain(stated.get(), 2),
                                        Amounts.plain(computed.get(), 2),
                                        Math.abs(-stated.get() - computed.get()) <= MOST_APART
                                                ? "; with the other sign it would agree"
                                                : "")))
                : Optional.empty();
    }

    /**
     * Base excess of blood, mmol/L.
     *
     * @param pco2 in mmHg, at 37 °C
     * @param hb in g/dL
     */
    static double vanSlyke(double pco2, double ph, double hb) {
        double amount = 0.620559 * hb;
        double bicarbonate = 0.0307 * pco2 * Math.pow(10, ph - 6.095);
        return (1 - 0.023 * amount) * (bicarbonate - 24.4 + (2.3 * amount + 7.7) * (ph - 7.4));
    }
}
