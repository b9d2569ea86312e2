package comparand.compose.results;

import comparand.compose.text.Run;
import comparand.diag.Located;
import comparand.document.result.CostsResult;
import comparand.document.result.CostsResult.CaseCostResult;
import comparand.document.result.CostsResult.CostLineResult;
import comparand.model.Comparand;
import comparand.model.library.CostRecord;
import comparand.model.library.Price;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Costs as data: price times quantity, and the sum for a case of each device. A sum with a price missing is no cost of a
 * case, and is not made; nor is one that holds nothing of the device itself.
 */
final class CostResults {

    private CostResults() {}

    static CostsResult of(Run run) {
        var costs = run.dossier().costs();
        var present = run.dossier().presentDevice().value();
        var cases = new ArrayList<CaseCostResult>();
        if (!costs.isEmpty()) {
            var ofPresent = sum(costs, present);
            run.dossier().devices().forEach(d -> cases.add(caseCost(costs, d.value(), ofPresent)));
        }
        return new CostsResult(
                costs.stream()
                        .flatMap(c -> c.price().value().price().stream())
                        .map(Price::currency)
                        .findFirst(),
                costs.stream().map(CostResults::line).toList(),
                cases);
    }

    private static CostLineResult line(CostRecord cost) {
        return new CostLineResult(
                cost.item().value(),
                cost.device().map(Located::value).orElse(Comparand.ALL_DEVICES),
                cost.price().value().price().map(p -> p.amount().toDouble()),
                cost.price().value().toString(),
                cost.perCase().value().toDouble(),
                amount(cost).map(BigDecimal::doubleValue),
                cost.givenBy().value(),
                cost.on().value().toString(),
                cost.notIncluded().map(Located::value));
    }

    private static Optional<BigDecimal> amount(CostRecord cost) {
        return cost.price()
                .value()
                .price()
                .map(p -> p.amount().value().multiply(cost.perCase().value().value()));
    }

    private static CaseCostResult caseCost(List<CostRecord> costs, String device, Optional<BigDecimal> ofPresent) {
        var own = costs.stream().filter(c -> c.concerns(device)).toList();
        var sum = sum(costs, device);
        return new CaseCostResult(
                device,
                own.size(),
                (int) own.stream().filter(c -> amount(c).isEmpty()).count(),
                sum.map(BigDecimal::doubleValue),
                sum.flatMap(s -> ofPresent.map(s::subtract)).map(BigDecimal::doubleValue));
    }

    private static Optional<BigDecimal> sum(List<CostRecord> costs, String device) {
        boolean ofItself = costs.stream()
                .anyMatch(c -> c.device().filter(d -> d.value().equals(device)).isPresent());
        var amounts = costs.stream()
                .filter(c -> c.concerns(device))
                .map(CostResults::amount)
                .toList();
        return ofItself && amounts.stream().allMatch(Optional::isPresent)
                ? Optional.of(amounts.stream().flatMap(Optional::stream).reduce(BigDecimal.ZERO, BigDecimal::add))
                : Optional.empty();
    }
}
