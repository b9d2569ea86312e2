package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.util.Optional;

/** A part of a device, and what it adds to values that are sums over parts. */
public record PartRecord(
        @Meaning("The part, as metrics name it: oxygenator, exchanger, filter ...")
        Located<String> part,

        @Meaning("integral, separate or absent") Located<Arrangement> arrangement,

        @Meaning("What the part adds, by metric: {priming-volume: 15 mL}")
        Entries<Located<Printed>> adds,

        @Meaning("Where that is stated") Optional<SourcedRecord> from) {}
