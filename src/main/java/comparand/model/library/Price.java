package comparand.model.library;

import static java.util.Objects.requireNonNull;

import comparand.unit.PrintedNumber;

/**
 * An amount of money.
 *
 * @param currency by its three letters after ISO 4217
 */
public record Price(PrintedNumber amount, String currency) {

    public Price {
        requireNonNull(amount, "amount");
        requireNonNull(currency, "currency");
    }

    @Override
    public String toString() {
        return amount.text() + " " + currency;
    }
}
