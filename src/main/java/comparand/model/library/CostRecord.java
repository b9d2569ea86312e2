package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.PrintedNumber;
import java.time.LocalDate;
import java.util.Optional;

/** What one thing costs that a case takes. Prices are given by the house; the tool looks none up. */
public record CostRecord(
        @Meaning("What is bought, in words") Located<String> item,

        @Meaning("The device it is for; all devices unless given")
        Optional<Located<String>> device,

        @Meaning("The price of one, with the code of its currency, such as 310.00 EUR; or not supplied")
        Located<StatedPrice> price,

        @Meaning("How many a case takes") @Key("per-case") Located<PrintedNumber> perCase,

        @Meaning("Who gave the price, or was asked for it") @Key("given-by")
        Located<String> givenBy,

        @Meaning("The day it was given, or asked for") Located<LocalDate> on,

        @Meaning("What the price does not include, such as transport") @Key("not-included")
        Optional<Located<String>> notIncluded) {

    /** Whether a case with this device takes it. */
    public boolean concerns(String id) {
        return device.map(d -> d.value().equals(id)).orElse(true);
    }
}
