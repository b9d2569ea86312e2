package comparand.model.library;

import comparand.diag.Located;
import comparand.unit.Printed;

/** Steps of one condition, such as flows. */
public record StepsRecord(
        @Meaning("The condition that is stepped, such as blood-flow")
        Located<String> condition,

        @Meaning("Its steps") OneOrMore<Located<Printed>> steps) {}
