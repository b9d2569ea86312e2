package comparand.model.library;

import comparand.diag.Located;

/** A quantity that the formula of a declared metric takes. */
public record InputRecord(
        @Meaning("Its name, as data columns and conditions have it")
        Located<String> input,

        @Meaning("Its letter in the formula, such as Plt_post")
        Located<String> symbol,

        @Meaning("In words") Located<String> means,
        @Meaning("Its unit; 1 for a bare number") Located<String> unit) {}
