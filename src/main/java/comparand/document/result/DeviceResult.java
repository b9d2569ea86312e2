package comparand.document.result;

import java.util.List;

/** A device and what is stated of it. */
public record DeviceResult(
        @Says("Name in records") String id,
        @Says("Name as printed") String name,
        @Says("Who makes it") String maker,

        @Says("The instructions for use of the units at hand")
        String instructions,

        @Says("Limits of use") List<StatementResult> label,
        @Says("Properties in words") List<StatementResult> characteristics) {

    /** Something a source states of a device. */
    public record StatementResult(
            @Says("technical, biological, clinical or label")
            String block,

            @Says("What is stated about") String name,
            @Says("What is stated") String is,
            @Says("Where, as a locator") String locator) {}
}
