package comparand.stat;

/**
 * The degrees of freedom of a standard uncertainty put together from independent ones: {@code df = u⁴ / Σ uᵢ⁴/dfᵢ}.
 *
 * <p>Welch, Biometrika 1947;34:28-35; Satterthwaite, Biometrics Bulletin 1946;2:110-114; JCGM 100:2008 (GUM) G.4.1.
 */
public final class Satterthwaite {

    private Satterthwaite() {}

    /**
     * Not truncated; infinite where no part has finite degrees of freedom.
     *
     * @param u the combined standard uncertainty
     * @param parts the parts, as contributions to u; their signs do not matter
     * @param df of each part, may be infinite
     */
    public static double df(double u, double[] parts, double[] df) {
        if (parts.length != df.length) {
            throw new IllegalArgumentException("%d parts, %d degrees of freedom".formatted(parts.length, df.length));
        }
        // as shares of u, so that no power under- or overflows
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            sum += u == 0 ? 0 : Math.pow(parts[i] / u, 4) / df[i];
        }
        return 1 / sum;
    }
}
