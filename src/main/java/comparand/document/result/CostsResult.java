package comparand.document.result;

import java.util.List;
import java.util.Optional;

/** What a case costs, as far as the house gave prices. */
public record CostsResult(
        @Says("Code of the currency; absent where no price was supplied")
        Optional<String> currency,

        @Says("Item by item, in the order of the dossier") List<CostLineResult> lines,

        @Says("For each device, in printing order; no entry where no costs were supplied")
        List<CaseCostResult> perCase) {

    /** One item. */
    public record CostLineResult(
            @Says("What is bought") String item,

            @Says("Name of the device, or * for all devices")
            String device,

            @Says("Price of one; absent where it was not supplied")
            Optional<Double> price,

            @Says("The price as given, or not supplied") String priceText,
            @Says("How many a case takes") double quantity,

            @Says("Price times quantity; absent where the price was not supplied")
            Optional<Double> cost,

            @Says("Who gave the price, or was asked for it") String givenBy,

            @Says("The day") String on,
            @Says("What the price does not include") Optional<String> notIncluded) {}

    /** The items of a device together. */
    public record CaseCostResult(
            @Says("Name of the device") String device,
            @Says("Items that a case with it takes") int items,
            @Says("Items whose price was not supplied") int withoutPrice,

            @Says("Cost of a case; absent where the price of an item, or of the device itself, was not supplied")
            Optional<Double> cost,

            @Says("Cost of a case minus that of the present device; absent where one of them is")
            Optional<Double> againstPresent) {}
}
