package comparand.study.quality;

import java.util.Optional;

/**
 * Checks that haemoglobin and haematocrit of one row agree: haematocrit is 3 times haemoglobin, give or take 4
 * percentage points. It matters because a haemoglobin in mmol/L read as g/dL is plausible by itself and wrong by a
 * factor of 1.6. The row is kept and pointed out. What to do: look at the units.
 */
final class HaemoglobinAgainstHaematocrit implements QualityRule {

    /** Haemoglobin in the red cells, g/dL; trade usage (32 to 36). */
    private static final double CELLS = 33.3;

    private static final double MOST_APART = 4;

    /** g/dL in one mmol/L of monomer. */
    private static final double MONOMER = 1.61145;

    @Override
    public String code() {
        return "haemoglobin-haematocrit-disagree";
    }

    @Override
    public String why() {
        return "a haemoglobin in mmol/L read as g/dL is plausible by itself and wrong by a factor of 1.6";
    }

    @Override
    public String fix() {
        return "check `unit:` of both columns, and whether both are of the same sample";
    }

    @Override
    public Optional<QualityFinding> look(QualityRow row) {
        var hb = row.given("haemoglobin");
        var hct = row.given("haematocrit");
        return hb.isPresent() && hct.isPresent() && !agree(hb.get(), hct.get())
                ? Optional.of(QualityFinding.remark(
                        "`haemoglobin` %s g/dL goes with a haematocrit of %s %%, not of %s %%, by more than 4 percentage points%s"
                                .formatted(
                                        Amounts.plain(hb.get(), 3),
                                        Amounts.plain(100 * hb.get() / CELLS, 3),
                                        Amounts.plain(hct.get(), 3),
                                        hint(hb.get(), hct.get()))))
                : Optional.empty();
    }

    private static boolean agree(double hb, double hct) {
        return Math.abs(100 * hb / CELLS - hct) <= MOST_APART;
    }

    private static String hint(double hb, double hct) {
        return agree(MONOMER * hb, hct)
                ? "; %s mmol/L would be %s g/dL, which agrees"
                        .formatted(Amounts.plain(hb, 3), Amounts.plain(MONOMER * hb, 3))
                : "";
    }
}
