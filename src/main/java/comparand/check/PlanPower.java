package comparand.check;

import comparand.unit.Unit;

/**
 * What it checks: a power to plan by that is below 50 % or above 99 %, or no share at all.
 *
 * <p>Why it matters: below, a measurement would sooner miss the difference than find it; above, no number is large enough; and
 * {@code 80} without its sign is 8000 %.
 *
 * <p>What to write instead: {@code power: 80 %}.
 */
final class PlanPower implements Rule {

    private static final double LEAST = 0.5;
    private static final double MOST = 0.99;

    @Override
    public String code() {
        return "plan-power";
    }

    @Override
    public void check(Context library, Findings findings) {
        library.eachQuestion((question, metric) -> question.plan()
                .flatMap(p -> p.power())
                .ifPresent(power -> {
                    var unit = power.value().unit();
                    boolean share = unit.convertsTo(Unit.ONE);
                    double is = share ? power.value().in(Unit.ONE) : 0;
                    if (!share || is < LEAST || is > MOST) {
                        findings.stop(
                                power.span(),
                                "a power lies between 50 %% and 99 %%, got `%s`".formatted(power.value()),
                                "below, a measurement would sooner miss the difference than find it; above, no number is"
                                        + " large enough",
                                "write it in per cent, such as `power: 80 %`");
                    }
                }));
    }
}
