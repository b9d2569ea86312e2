package comparand.stat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Rows on planning. */
final class PlanRows {

    static final Map<String, Function<Row, Computed>> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("plan-power-montgomery", in -> {
            double[] z = in.numbers("z");
            double n = new PowerPlan(in.d("delta"), in.d("sigma"), in.d("alpha")).normalCount(z[0], z[1]);
            return Computed.of("n_raw", n).and("n", Math.ceil(n));
        });
        ROWS.put("plan-precision-z", in -> {
            double n = PrecisionPlan.normalCount(in.d("sigma"), in.d("half_width"), in.d("level"));
            return Computed.of("n_raw", n).and("n", Math.ceil(n));
        });
        ROWS.put("plan-precision-t", in -> {
            int n = PrecisionPlan.count(in.d("sd"), in.d("half_width"), in.d("level"))
                    .orElseThrow();
            return Computed.of("n", n).and("half_width_at_n", PrecisionPlan.halfWidth(n, in.d("sd"), in.d("level")));
        });
        ROWS.put("plan-centres", in -> {
            var plan = new CentrePlan(in.d("tau"), in.d("sigma"), in.d("level"));
            int centres = plan.centres(in.i("m"), in.d("half_width")).orElseThrow();
            return Computed.of("J", centres).and("half_width_at_J", plan.halfWidth(centres, in.i("m")));
        });
        ROWS.put("plan-tost-onesample", in -> {
            var none = new EquivalencePlan(in.d("margin"), 0, in.d("sd"), in.d("alpha"));
            var one = new EquivalencePlan(in.d("margin"), 1, in.d("sd"), in.d("alpha"));
            int n0 = none.countOfOneGroup(in.d("power")).orElseThrow();
            int n1 = one.countOfOneGroup(in.d("power")).orElseThrow();
            return Computed.of("n_true0", n0)
                    .and("power_true0", none.powerOfOneGroup(n0))
                    .and("n_true1", n1)
                    .and("power_true1", one.powerOfOneGroup(n1))
                    .and("n_z_true0_raw", none.normalCount(in.d("power")))
                    .and("n_z_true1_raw", one.normalCount(in.d("power")));
        });
        ROWS.put("plan-tost-twosample", in -> {
            var plan = new EquivalencePlan(in.d("margin"), in.d("true_diff"), in.d("sd"), in.d("alpha"));
            int n = plan.countOfEachGroup(in.d("power")).orElseThrow();
            return Computed.of("n_per_group", n).and("power", plan.powerOfTwoGroups(n, n));
        });
        ROWS.put(
                "plan-tost-fixed-benchmark-n",
                in -> Computed.of(
                        "power",
                        new EquivalencePlan(in.d("margin"), in.d("true_diff"), in.d("sd"), in.d("alpha"))
                                .powerOfTwoGroups(in.i("n_local"), in.i("n_benchmark"))));
        ROWS.put(
                "plan-power-t",
                in -> Computed.of(
                        "n_raw",
                        new PowerPlan(in.d("delta"), in.d("sd"), in.d("alpha"))
                                .exactCount(in.d("power"))
                                .orElseThrow()));
    }

    private PlanRows() {}
}
