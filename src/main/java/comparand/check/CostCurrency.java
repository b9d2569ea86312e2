package comparand.check;

import comparand.model.library.CostRecord;
import comparand.model.library.StatedPrice;

/**
 * What it checks: prices in two currencies in one dossier.
 *
 * <p>Why it matters: their sum would be of nothing, and the tool knows no rates of exchange.
 *
 * <p>What to write instead: all prices in one currency, with the rate and its day under {@code given-by:}.
 */
final class CostCurrency implements Rule {

    @Override
    public String code() {
        return "cost-currency";
    }

    @Override
    public void check(Context context, Findings findings) {
        for (var dossier : context.dossiers()) {
            var first = dossier.costs().stream()
                    .map(CostRecord::price)
                    .flatMap(p -> p.value().price().stream())
                    .findFirst();
            first.ifPresent(known -> dossier.costs().stream()
                    .map(CostRecord::price)
                    .filter(p -> p.value().price().isPresent())
                    .filter(p -> !p.value().price().get().currency().equals(known.currency()))
                    .forEach(p -> findings.stop(
                            p.span(),
                            "`%s` is in another currency than `%s` above it".formatted(p.value(), known),
                            "the cost of a case is a sum, and this program knows no rates of exchange",
                            "write it in %s, and name the rate and its day under `given-by:`, or write `%s`"
                                    .formatted(known.currency(), StatedPrice.NOT_SUPPLIED_WORDS))));
        }
    }
}
