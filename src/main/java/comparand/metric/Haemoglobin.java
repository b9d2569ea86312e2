package comparand.metric;

/**
 * Total haemoglobin as mass from what a laboratory may report instead: the amount of monomer, by iron, or of tetramer. The
 * conversion is exact for the molar mass named; which of the two is meant must be declared, never guessed.
 */
final class Haemoglobin {

    private static final Citation MOLAR_MASS = Citation.fromMemory(
            "Molar mass of haemoglobin", "monomer 16 114.5 g/mol, tetramer 64 458 g/mol; 1 g/dL is 0.6206 mmol/L");

    private Haemoglobin() {}

    static Metric metric() {
        var monomer = Letters.HAEMOGLOBIN_AMOUNT;
        var tetramer = Letters.HAEMOGLOBIN_TETRAMER_AMOUNT;
        return Metric.named("haemoglobin", "total haemoglobin")
                .symbol("Hb")
                .meaning("Mass of haemoglobin per volume of blood")
                .unit("g/dL")
                .plausible(4, 20)
                .possible(0, 30)
                .derived(Derivation.of(
                        "Hb = ctHb · 16 114.5 g/mol", MOLAR_MASS, in -> in.of(monomer) * 1.61145, monomer))
                .derived(Derivation.of(
                        "Hb = ctHb₄ · 64 458 g/mol", MOLAR_MASS, in -> in.of(tetramer) * 6.4458, tetramer))
                .cites(MOLAR_MASS)
                .worked(WorkedValue.of(
                        "11.925 g/dL", Citation.derived("7.4 × 1.61145"), "haemoglobin-amount=7.4 mmol/L"))
                .worked(WorkedValue.of(
                        "12.000 g/dL",
                        Citation.derived("1.86168 × 6.4458"),
                        "haemoglobin-tetramer-amount=1.86168 mmol/L"))
                .build();
    }
}
