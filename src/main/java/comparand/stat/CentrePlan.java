package comparand.stat;

/**
 * How many centres of m cases each give an interval of a wanted half-width: {@code t(J-1) √((τ² + s²/m)/J)}, the interval of
 * centre means in a balanced design. More centres beat more cases.
 *
 * @param tau SD between centres
 * @param sd SD within a centre
 */
public record CentrePlan(double tau, double sd, double level) {

    private static final int MOST = 100_000;

    public CentrePlan {
        if (!(tau >= 0) || !(sd >= 0)) {
            throw new IllegalArgumentException("spreads are not negative, got %s and %s".formatted(tau, sd));
        }
        Quantiles.requireLevel(level);
    }

    public double halfWidth(int centres, int casesEach) {
        return halfWidth(ComparedGroups.FIXED_VALUE, centres, casesEach);
    }

    /** That of a difference, with centres of its own for every group that is to be measured. */
    public double halfWidth(ComparedGroups groups, int centres, int casesEach) {
        return PrecisionPlan.halfWidth(groups, centres, sdOfCentres(casesEach), level);
    }

    /** {@code √(τ² + s²/m)}: by how much the means of centres of m cases differ. */
    private double sdOfCentres(int casesEach) {
        SpreadConversion.requireCount(casesEach, 1);
        return Math.sqrt(tau * tau + sd * sd / casesEach);
    }

    /** What the half-width cannot fall below with these centres, however many cases they bring: {@code t τ/√J}. */
    public double leastHalfWidth(int centres) {
        SpreadConversion.requireCount(centres, 2);
        return t(centres) * tau / Math.sqrt(centres);
    }

    /** The smallest number of centres. */
    public Derived<Integer> centres(int casesEach, double halfWidth) {
        return centres(ComparedGroups.FIXED_VALUE, casesEach, halfWidth);
    }

    /** The smallest number for every group that is to be measured; refused where none suffices. */
    public Derived<Integer> centres(ComparedGroups groups, int casesEach, double halfWidth) {
        return PrecisionPlan.count(groups, sdOfCentres(casesEach), halfWidth, level);
    }

    /** The smallest number of cases each, with the centres fixed; refused where these centres cannot reach it. */
    public Derived<Integer> casesEach(int centres, double halfWidth) {
        return Smallest.from(1, MOST, m -> halfWidth(centres, m) <= halfWidth);
    }

    private double t(int centres) {
        return Quantiles.tTwoSided(level, centres - 1);
    }
}
