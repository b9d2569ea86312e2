package comparand.stat;

import java.util.List;

/**
 * Subgroups of one study put together: the mean and SD that all their values would have given.
 *
 * <pre>
 * N = Σ nᵢ,  M = Σ nᵢ mᵢ / N,  SD² = [ Σ (nᵢ - 1) sᵢ² + Σ nᵢ (mᵢ - M)² ] / (N - 1)
 * </pre>
 *
 * <p>Algebra, identical for two groups to the table of the Cochrane Handbook for Systematic Reviews of Interventions,
 * 6.5.2.10. Not a way to pool studies, and not the SD within groups.
 */
public final class Subgroups {

    private Subgroups() {}

    /** The moments of all values together; of one group, its own. */
    public static Moments together(List<Moments> groups) {
        if (groups.isEmpty()) {
            throw new IllegalArgumentException("no groups to put together");
        }
        int n = groups.stream().mapToInt(Moments::n).reduce(0, Math::addExact);
        // as distances from the first mean, so that a large common offset costs no digits
        double origin = groups.get(0).mean();
        double shift =
                groups.stream().mapToDouble(g -> g.n() * (g.mean() - origin)).sum() / n;
        double squares = groups.stream()
                .mapToDouble(g -> (g.n() - 1) * g.sd() * g.sd() + g.n() * Math.pow(g.mean() - origin - shift, 2))
                .sum();
        return new Moments(origin + shift, Math.sqrt(squares / (n - 1)), n);
    }
}
