package comparand.stat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.StreamSupport;

/** Rows on tolerance intervals, rounding and the propagation of uncertainty. */
final class UncertaintyRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put(
                "tol-2sided-ehandbook",
                in -> Computed.of("value", ToleranceFactor.HOWE.of(in.i("n"), in.d("p"), in.d("gamma"))));
        ROWS.put(
                "tol-1sided-ehandbook",
                in -> Computed.of("k1_approx", OneSidedTolerance.approximateFactor(in.i("n"), in.d("p"), in.d("gamma")))
                        .and("k1_nct", OneSidedTolerance.factor(in.i("n"), in.d("p"), in.d("gamma"))));
        ROWS.put("tol-exact-table", in -> {
            var factors = new Computed();
            for (double n : in.numbers("n")) {
                factors.and(String.valueOf((int) n), ToleranceFactor.EXACT.of((int) n, in.d("p"), in.d("gamma")));
            }
            return factors;
        });
        ROWS.put("tol-exact-vs-howe", in -> {
            var cases = in.groups("cases");
            return new Computed()
                    .and(
                            "exact",
                            cases.stream()
                                    .mapToDouble(c -> factor(ToleranceFactor.EXACT, c))
                                    .toArray())
                    .and(
                            "howe",
                            cases.stream()
                                    .mapToDouble(c -> factor(ToleranceFactor.HOWE, c))
                                    .toArray());
        });
        ROWS.put("three-intervals", in -> {
            var m = new Moments(in.d("mean"), in.d("sd"), in.i("n"));
            double level = in.d("level");
            return Computed.of("ci_half", m.estimate().interval(level).halfWidth())
                    .and("pi_half", m.predictionForOneMore(level).halfWidth())
                    .and("pi_mean_of_6_half", m.predictionForMeanOf(6, level).halfWidth())
                    .and(
                            "ti_half_exact",
                            ToleranceFactor.EXACT
                                    .interval(m, in.d("p"), in.d("gamma"))
                                    .halfWidth())
                    .and(
                            "ti_half_howe",
                            ToleranceFactor.HOWE
                                    .interval(m, in.d("p"), in.d("gamma"))
                                    .halfWidth());
        });
        ROWS.put("gum-h1", in -> {
            var budget = budget(in, "components_nm", "dof");
            double df = budget.truncatedDf().orElseThrow();
            double k = Quantiles.tTwoSided(in.d("coverage"), df);
            return Computed.of("uc", budget.uncertainty())
                    .and("veff", df)
                    .and("k", k)
                    .and("U99", k * budget.uncertainty());
        });
        ROWS.put("gum-h1-sub", in -> {
            double uc = budget(in, "u", "dof").uncertainty();
            // the print rounds u to 9.7 before it takes the degrees of freedom; unrounded they are 25.4
            double printed = Math.rint(10 * uc) / 10;
            return Computed.of("uc", uc).and("veff", Satterthwaite.df(printed, in.numbers("u"), in.numbers("dof")));
        });
        ROWS.put("gum-h2", in -> {
            var inputs = Inputs.independent(List.of(
                            Input.normal(in.d("V"), in.d("u_V")),
                            Input.normal(in.d("I"), in.d("u_I")),
                            Input.normal(in.d("phi"), in.d("u_phi"))))
                    .correlated(0, 1, in.d("r_VI"))
                    .correlated(0, 2, in.d("r_Vphi"))
                    .correlated(1, 2, in.d("r_Iphi"));
            var r = LinearPropagation.of(inputs, x -> x[0] / x[1] * Math.cos(x[2]));
            var x = LinearPropagation.of(inputs, v -> v[0] / v[1] * Math.sin(v[2]));
            var z = LinearPropagation.of(inputs, v -> v[0] / v[1]);
            return Computed.of("R", r.value())
                    .and("u_R", r.uncertainty())
                    .and("X", x.value())
                    .and("u_X", x.uncertainty())
                    .and("Z", z.value())
                    .and("u_Z", z.uncertainty())
                    .and(
                            "r_RX",
                            LinearPropagation.correlation(
                                    inputs, v -> v[0] / v[1] * Math.cos(v[2]), v -> v[0] / v[1] * Math.sin(v[2])))
                    .and(
                            "r_RZ",
                            LinearPropagation.correlation(inputs, v -> v[0] / v[1] * Math.cos(v[2]), v -> v[0] / v[1]))
                    .and(
                            "r_XZ",
                            LinearPropagation.correlation(inputs, v -> v[0] / v[1] * Math.sin(v[2]), v -> v[0] / v[1]));
        });
        ROWS.put("gum-rect", in -> Computed.of("u", ReadingUncertainty.rectangular(in.d("half_width"))));
        ROWS.put("jcgm101-rect4", in -> {
            var inputs = Inputs.independent(Collections.nCopies(4, Input.rectangular(0, in.d("half_width_each"))));
            // 4·10⁶ draws leave a standard error of 0.003 on the half-width, within the 0.005 of the print
            var drawn = MonteCarloPropagation.of(inputs, x -> Arrays.stream(x).sum(), 4_000_000, 101, in.d("coverage"));
            return Computed.of(
                            "u",
                            LinearPropagation.of(inputs, x -> Arrays.stream(x).sum())
                                    .uncertainty())
                    .and("hi", drawn.interval().halfWidth());
        });
        ROWS.put("gum-vo2", in -> {
            var names = List.of("Q", "Hb", "So", "Si", "Po", "Pi");
            var inputs = Inputs.independent(names.stream()
                    .map(n -> Input.normal(in.at("x").d(n), in.at("u_normal").d(n)))
                    .toList());
            var both = Propagation.of(
                    inputs,
                    x -> x[0] * 10 * (1.34 * x[1] * (x[2] - x[3]) / 100 + 0.0031 * (x[4] - x[5])),
                    MonteCarloPropagation.DRAWS,
                    7,
                    0.95);
            return Computed.of("y", both.linear().value())
                    .and("u_linear", both.linear().uncertainty())
                    .and("u_mc", both.drawn().uncertainty())
                    .and("mc_lo", "mc_hi", both.drawn().interval());
        });
        ROWS.put("point-with-rounding", in -> {
            var local = new Moments(in.d("local_mean"), in.d("local_sd"), in.i("local_n")).estimate();
            double a = in.d("half_width");
            var wide = MeanDifference.from(local.widenedBy(a), in.d("figure"));
            return Computed.of("diff", wide.value())
                    .and("u_figure", ReadingUncertainty.rectangular(a))
                    .and("u_c", wide.se())
                    .and("veff", wide.df())
                    .and("lo", "hi", wide.interval(0.95));
        });
    }

    private UncertaintyRows() {}

    private static double factor(ToleranceFactor method, double... c) {
        return method.of((int) c[0], c[1], c[2]);
    }

    /** A sum of components with their degrees of freedom, infinite where none are printed. */
    private static LinearPropagation budget(Row in, String components, String dof) {
        double[] u = in.numbers(components);
        var df = StreamSupport.stream(in.in().required(dof).spliterator(), false)
                .map(v -> v.isNull() ? Double.POSITIVE_INFINITY : v.asDouble())
                .toList();
        var inputs = new ArrayList<Input>();
        for (int k = 0; k < u.length; k++) {
            inputs.add(new Input(0, u[k], df.get(k), Input.Shape.NORMAL));
        }
        return LinearPropagation.of(
                Inputs.independent(inputs), x -> Arrays.stream(x).sum());
    }
}
