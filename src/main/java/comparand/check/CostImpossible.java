package comparand.check;

/**
 * What it checks: a price below zero, or a quantity a case takes that is not above zero.
 *
 * <p>Why it matters: the cost of a case would come out too low.
 *
 * <p>What to write instead: the price as it was given; what a case does not take is left out.
 */
final class CostImpossible implements Rule {

    @Override
    public String code() {
        return "cost-impossible";
    }

    @Override
    public void check(Context context, Findings findings) {
        context.dossiers().stream().flatMap(d -> d.costs().stream()).forEach(cost -> {
            cost.price()
                    .value()
                    .price()
                    .filter(p -> p.amount().value().signum() < 0)
                    .ifPresent(p -> findings.stop(
                            cost.price().span(),
                            "the price of `%s` is below zero: `%s`"
                                    .formatted(cost.item().value(), p),
                            "the cost of a case would come out too low",
                            "write the price as it was given, after what is deducted from it"));
            if (cost.perCase().value().value().signum() <= 0) {
                findings.stop(
                        cost.perCase().span(),
                        "a case takes more than none of `%s`, got `%s`"
                                .formatted(cost.item().value(), cost.perCase().value()),
                        "an item that no case takes adds nothing to its cost",
                        "write how many a case takes, such as `1`, or `0.1` for one in ten cases; or take the entry out");
            }
        });
    }
}
