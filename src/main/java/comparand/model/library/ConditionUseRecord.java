package comparand.model.library;

import comparand.diag.Located;
import comparand.metric.Effect;
import comparand.metric.Role;
import java.util.Optional;

/** How a declared metric depends on a condition. */
public record ConditionUseRecord(
        @Meaning("The condition, one the tool knows or a new one")
        Located<String> condition,

        @Meaning("decides, decides-within-device or qualifies")
        Located<Role> role,

        @Meaning("equal, 1 g/dL, or 5 % of the value") Located<String> tolerance,

        @Meaning("What more of it does to the metric: raises, lowers, none or not-predictable")
        Optional<Located<Effect>> more,

        @Meaning("Why, in one clause") Optional<Located<String>> because,

        @Meaning("For a new condition: its name in sentences")
        Optional<Located<String>> name,

        @Meaning("For a new condition: its name in the condition line") @Key("short-name")
        Optional<Located<String>> shortName,

        @Meaning("For a new condition that is a number: the unit it is kept in")
        Optional<Located<String>> unit,

        @Meaning("For a new condition in words: the words allowed")
        Optional<OneOrMore<Located<String>>> words) {}
