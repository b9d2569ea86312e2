package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;
import java.util.Optional;

/** What a further measurement for a question is to be planned by. */
public record PlanRecord(
        @Meaning("The differences to be found; the margin unless given")
        Optional<OneOrMore<Located<Printed>>> detect,

        @Meaning("Standard deviation of single results; that of the local results unless given")
        Optional<Located<Printed>> sd,

        @Meaning("How surely such a difference is to be found, in per cent; 80 % unless given")
        Optional<Located<Printed>> power) {}
